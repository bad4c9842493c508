namespace CareSheets.Quantities.Notation;

/// <summary>
/// Which unit and basis the parts of a written range have, and whether that can be.
/// </summary>
internal sealed class QuantityMeaning(
    QuantityParts parts, Dimension dimension, bool basisRequired, QuantityProblems problems)
{
    private readonly (TextPart? Unit, TextPart? Mark) _first = Basis.Split(parts.FirstUnit);
    private readonly (TextPart? Unit, TextPart? Mark) _second = Basis.Split(parts.SecondUnit);

    private TextPart? UnitWord => parts.Prefix ?? _first.Unit ?? _second.Unit;

    private TextPart? Mark => _first.Mark ?? _second.Mark;

    /// <summary>The range, typed as its writer left it.</summary>
    public ParseResult<StatedRange> Read(string typed) => FindUnit().Then<StatedRange>(unit =>
        (BasisProblem(unit) ?? FigureProblem(unit)) is { } problem
            ? problem
            : Stated(unit, typed));

    private ParseResult<Unit> FindUnit()
    {
        Unit? found = null;
        foreach (var word in new[] { parts.Prefix, _first.Unit, _second.Unit })
        {
            if (word is null)
            {
                continue;
            }

            var next = Find(word);
            if (!next.Ok)
            {
                return next;
            }

            if (found is not null && found != next.Value)
            {
                return QuantityProblems.Mixed(UnitWord!, word);
            }

            found = next.Value;
        }

        return found is not null ? found
            : dimension.UnitOptional ? dimension.Canonical
            : problems.NoUnit(parts, Basis.Of(Mark));
    }

    private ParseResult<Unit> Find(TextPart word)
    {
        if (dimension.Find(word.Text) is { } unit)
        {
            var mayStandHere = word != parts.Prefix || dimension.UnitOptional;
            return mayStandHere ? unit : problems.NotANumber(word);
        }

        if (dimension.FindAmbiguous(word.Text) is { } doubt)
        {
            return problems.AmbiguousUnit(word, doubt, parts);
        }

        var kind = DimensionCatalogue.All.FirstOrDefault(other => other.Find(word.Text) is not null)
            ?? DimensionCatalogue.All.FirstOrDefault(
                other => other.FindAmbiguous(word.Text) is not null);
        return kind is not null ? problems.WrongKind(word, kind)
            : word == parts.Prefix ? problems.NotANumber(word)
            : problems.UnknownUnit(word);
    }

    private QuantityProblem? BasisProblem(Unit unit)
    {
        if (Mark is null)
        {
            return basisRequired ? problems.MissingBasis(parts, unit) : null;
        }

        if (!basisRequired)
        {
            return QuantityProblems.UnexpectedBasis(Mark, parts, unit);
        }

        return _second.Mark is { } other && Basis.Of(other) != Basis.Of(Mark)
            ? QuantityProblems.Mixed(Mark, other)
            : null;
    }

    private QuantityProblem? FigureProblem(Unit unit)
    {
        if (!dimension.IsPossible(unit.ToCanonical(parts.First.Value)))
        {
            return problems.Impossible(parts.First, unit);
        }

        if (parts.Second is not { } second)
        {
            return null;
        }

        return !dimension.IsPossible(unit.ToCanonical(second.Value))
            ? problems.Impossible(second, unit)
            : parts.First.Value > second.Value
                ? QuantityProblems.Reversed(parts, unit, Basis.Of(Mark))
                : null;
    }

    private StatedRange Stated(Unit unit, string typed)
    {
        var first = unit.ToCanonical(parts.First.Value);
        var second = parts.Second is { } number ? unit.ToCanonical(number.Value) : first;
        return new StatedRange
        {
            Dimension = dimension,
            Low = parts.Bound is Bound.Below or Bound.AtOrBelow ? null : first,
            High = parts.Bound is Bound.Above or Bound.AtOrAbove ? null : second,
            Unit = unit,
            Bound = parts.Bound,
            Basis = Basis.Of(Mark),
            Typed = typed,
            Text = RangeText.Write(parts.Bound, parts.Figures, unit, Basis.Of(Mark)),
        };
    }
}
