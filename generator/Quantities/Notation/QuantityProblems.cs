using Kind = CareSheets.Quantities.QuantityProblemKind;

namespace CareSheets.Quantities.Notation;

/// <summary>What can be wrong with one text: the place, and the right form beside it.</summary>
internal sealed class QuantityProblems(string text, Dimension dimension, bool basisRequired)
{
    private string Example => dimension.Example + (basisRequired ? " TL" : string.Empty);

    /// <summary>Nothing at all, or a comparison sign and nothing after it.</summary>
    public QuantityProblem NothingAfter(Bound bound) => bound == Bound.None
        ? Make(Kind.Empty, 0, text.Length, ("suggestion", Example))
        : NotANumber(new TextPart(0, text));

    public QuantityProblem NotANumber(TextPart found) =>
        Make(Kind.NotANumber, found, ("found", found.Text), ("suggestion", Example));

    /// <summary>No figure where one should begin; points at what stands there instead.</summary>
    public QuantityProblem NotANumber(int index)
    {
        var rest = text.AsSpan(index).TrimEnd().ToString();
        return rest.Length > 0
            ? NotANumber(new TextPart(index, rest))
            : NotANumber(new TextPart(0, text.TrimEnd()));
    }

    public QuantityProblem TooManyNumbers(TextPart found) =>
        Make(Kind.TooManyNumbers, found, ("found", found.Text), ("suggestion", Example));

    public QuantityProblem CommaDecimal(TextPart found)
    {
        var corrected = DecimalComma.Correct(text);
        var reread = QuantityText.Parse(corrected, dimension, basisRequired);
        var suggestion = reread.Ok
            ? reread.Value.Text
            : reread.Problem.Values.GetValueOrDefault("suggestion", corrected.Trim());
        return Make(Kind.CommaDecimal, found, ("found", found.Text), ("suggestion", suggestion));
    }

    public QuantityProblem NoUnit(QuantityParts parts, LengthBasis? basis)
    {
        var highest = Math.Max(parts.First.Value, parts.Second?.Value ?? parts.First.Value);
        var metric = dimension.For(UnitSystem.Metric);
        var likely = metric.ToCanonical(highest) > dimension.MetricUpTo
            ? dimension.For(UnitSystem.US)
            : metric;
        var shown = basis ?? (basisRequired ? LengthBasis.Total : null);
        var suggestion = Write(parts, likely, shown);
        return Make(Kind.NoUnit, parts.AfterFigures, 0,
            ("found", parts.Figures),
            ("suggestion", dimension.OrPerhaps is { } other
                ? $"{suggestion} or {Write(parts, other, shown)}" : suggestion));
    }

    public QuantityProblem WrongKind(TextPart unit, Dimension found) =>
        Make(Kind.WrongKind, unit, ("unit", unit.Text), ("expected", dimension.Key),
            ("actual", found.Key), ("choices", Symbols(dimension.Units)));

    public QuantityProblem UnknownUnit(TextPart unit) =>
        Make(Kind.UnknownUnit, unit,
            ("unit", unit.Text), ("choices", Symbols(dimension.Units)));

    public QuantityProblem AmbiguousUnit(TextPart unit, AmbiguousUnit doubt, QuantityParts parts)
    {
        // Where the figure itself would change, repeating it with another unit would mislead.
        var suggestion = doubt.Reason is AmbiguityReason.NeedsDensity or AmbiguityReason.NeedsFactor
            ? Example
            : Write(parts, doubt.Choices[0], basis: null);
        return Make(Kind.AmbiguousUnit, unit,
            ("unit", unit.Text), ("reason", doubt.Reason.ToString()),
            ("choices", Symbols(doubt.Choices)), ("suggestion", suggestion));
    }

    public static QuantityProblem Mixed(TextPart first, TextPart second) =>
        Make(Kind.MixedUnits, second, ("first", first.Text), ("second", second.Text));

    public QuantityProblem MissingBasis(QuantityParts parts, Unit unit) =>
        Make(Kind.MissingBasis, text.TrimEnd().Length, 0,
            ("choices", Basis.Marks), ("suggestion", Write(parts, unit, LengthBasis.Total)));

    public static QuantityProblem UnexpectedBasis(
        TextPart mark, QuantityParts parts, Unit unit) =>
        Make(Kind.UnexpectedBasis, mark,
            ("basis", mark.Text), ("suggestion", Write(parts, unit, basis: null)));

    public static QuantityProblem Reversed(
        QuantityParts parts, Unit unit, LengthBasis? basis) =>
        Make(Kind.Reversed, parts.First.Index, parts.AfterFigures - parts.First.Index,
            ("first", parts.First.Digits), ("second", parts.Second!.Digits),
            ("suggestion", Write(parts.Swapped(), unit, basis)));

    public QuantityProblem Impossible(NumberPart number, Unit unit)
    {
        var limit = unit.ToCanonical(number.Value) < dimension.Minimum
            ? dimension.Minimum
            : dimension.Maximum;
        var shown = Figure.Write(unit.FromCanonical(limit));
        return Make(Kind.Impossible, number.Index, number.Length,
            ("found", RangeText.Write(Bound.None, number.Digits, unit, basis: null)),
            ("limit", RangeText.Write(Bound.None, shown, unit, basis: null)));
    }

    private static string Write(QuantityParts parts, Unit unit, LengthBasis? basis) =>
        RangeText.Write(parts.Bound, parts.Figures, unit, basis);

    private static string Symbols(IEnumerable<Unit> units) =>
        string.Join(", ", units.Select(unit => unit.Symbol.Length == 0 ? unit.Key : unit.Symbol));

    private static QuantityProblem Make(
        Kind kind, TextPart part, params (string Name, string Value)[] values) =>
        Make(kind, part.Index, part.Text.Length, values);

    private static QuantityProblem Make(
        Kind kind, int index, int length, params (string Name, string Value)[] values) =>
        new(kind, index, length,
            values.ToDictionary(
                pair => pair.Name,
                pair => pair.Name == "choices" ? pair.Value : Excerpt.Of(pair.Value)));
}
