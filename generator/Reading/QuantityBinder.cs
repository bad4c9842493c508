using CareSheets.Diagnostics;
using CareSheets.Quantities;

namespace CareSheets.Reading;

/// <summary>Text of a figure to a stated range, with a message for each way in which it can fail.</summary>
internal sealed class QuantityBinder(DiagnosticBag bag)
{
    /// <summary>Nothing when the text is no figure of the dimension; then the bag says why.</summary>
    public Sourced<StatedRange>? Bind(Sourced<string>? text, QuantityDeclaration declared, string path)
    {
        if (text is null)
            return null;
        var parsed = QuantityText.Parse(text.Value, declared.Dimension, declared.BasisRequired);
        if (!parsed.Ok)
        {
            bag.Add(Describe(parsed.Problem, text, declared, path).At(path));
            return null;
        }
        var range = parsed.Value;
        if (!IsWithin(range, declared.Plausible))
        {
            bag.Add(Diagnostic.Of(QuantityCodes.BeyondLimits, text.Span,
                ("text", range.Text), ("limits", declared.Plausible.Text)).At(path));
            return null;
        }
        return text.With(range);
    }

    /// <summary>As <see cref="Bind"/>, for figures such as a size whose ends must both be said.</summary>
    public Sourced<StatedRange>? BindClosed(Sourced<string>? text, QuantityDeclaration declared, string path)
    {
        var bound = Bind(text, declared, path);
        if (bound is null || bound.Value is { Low: not null, High: not null })
            return bound;
        bag.Add(Diagnostic.Of(QuantityCodes.OpenEnd, bound.Span,
            ("text", bound.Value.Text), ("example", declared.Dimension.Example)).At(path));
        return null;
    }

    public static bool IsWithin(StatedRange inner, StatedRange outer)
    {
        var slack = 1e-9 * Math.Max(1, Math.Abs((outer.High ?? 0) - (outer.Low ?? 0)));
        bool Fits(double? end) => end is not { } value ||
            (!(value < outer.Low - slack) && !(value > outer.High + slack));
        return Fits(inner.Low) && Fits(inner.High);
    }

    private static Diagnostic Describe(
        QuantityProblem problem, Sourced<string> text, QuantityDeclaration declared, string path)
    {
        var (part, expected) = (Part(text, problem), declared.Dimension);
        var example = expected.Example + (declared.BasisRequired ? " TL" : "");
        (string, string)[] known =
        [
            ("text", part.Value), ("dimension", DimensionName.Of(expected)), ("expected", DimensionName.Of(expected)),
            ("example", expected.Example), ("units", string.Join(", ", expected.Units.Select(u => u.Spellings[0]))),
            ("suggestion", expected.Example), ("advice", FigureHint.ForNoNumber(text.Value, path, example)),
            ("why", FigureHint.Why(problem)), ("way", FigureHint.Way(problem, example)),
        ];
        return Diagnostic.Of(CodeOf(problem.Kind), part.Span, [.. known, .. problem.Values.Select(Named)]);
    }

    /// <summary>Dimensions are given by key; people are told their names.</summary>
    private static (string, string) Named(KeyValuePair<string, string> value) =>
        (value.Key, DimensionCatalogue.Find(value.Value) is { } dimension ? DimensionName.Of(dimension) : value.Value);

    private static Sourced<string> Part(Sourced<string> text, QuantityProblem problem)
    {
        var isOneLine = text.Span.Start.Line == text.Span.End.Line;
        if (problem.Length <= 0 || problem.Index + problem.Length > text.Value.Length)
            return text with { Value = Excerpt.Of(text.Value) };
        var value = Excerpt.Of(text.Value.Substring(problem.Index, problem.Length));
        return isOneLine ? new(value, text.Span.Part(problem.Index, problem.Length)) : text with { Value = value };
    }

    private static DiagnosticCode CodeOf(QuantityProblemKind kind) => kind switch
    {
        QuantityProblemKind.Empty => QuantityCodes.Empty,
        QuantityProblemKind.NotANumber => QuantityCodes.NotANumber,
        QuantityProblemKind.NoUnit => QuantityCodes.NoUnit,
        QuantityProblemKind.CommaDecimal => QuantityCodes.CommaDecimal,
        QuantityProblemKind.Reversed => QuantityCodes.Reversed,
        QuantityProblemKind.WrongKind => QuantityCodes.WrongKind,
        QuantityProblemKind.UnknownUnit => QuantityCodes.UnknownUnit,
        QuantityProblemKind.AmbiguousUnit => QuantityCodes.AmbiguousUnit,
        QuantityProblemKind.MixedUnits => QuantityCodes.MixedUnits,
        QuantityProblemKind.MissingBasis => QuantityCodes.MissingBasis,
        QuantityProblemKind.UnexpectedBasis => QuantityCodes.UnexpectedBasis,
        QuantityProblemKind.Impossible => QuantityCodes.Impossible,
        QuantityProblemKind.TooManyNumbers => QuantityCodes.TooManyNumbers,
    };
}
