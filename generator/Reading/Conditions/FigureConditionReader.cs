using System.Globalization;
using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Quantities;
using CareSheets.Rules;

namespace CareSheets.Reading.Conditions;

/// <summary>
/// Conditions on figures: <c>lowest care.ph is at least 7</c>, <c>highest tank.length is below 3 times
/// highest adult.length</c>.
/// </summary>
internal sealed class FigureConditionReader(FieldCatalogue fields, DiagnosticBag bag)
{
    private static readonly IReadOnlyList<(string Words, Comparison Comparison)> Comparisons =
    [
        ("is below", Rules.Comparison.Below), ("is above", Rules.Comparison.Above),
        ("is at least", Rules.Comparison.AtLeast), ("is at most", Rules.Comparison.AtMost),
    ];

    private readonly QuantityBinder _quantities = new(bag);

    /// <summary>Which number of a range the sentence begins with, if it is about a figure.</summary>
    public static RangePart? PartOf(ConditionText said) =>
        said.Take("lowest") ? RangePart.Lowest
        : said.Take("highest") ? RangePart.Highest
        : said.Take("width of") ? RangePart.Width : null;

    public Condition? Read(ConditionText said, RangePart part)
    {
        if (Figure(said) is not { } declared)
            return null;
        return Comparison(said, new FigurePart(declared.Path, part), declared);
    }

    public Condition? Comparison(ConditionText said, FigurePart figure, FieldDeclaration declared)
    {
        var found = Comparisons.FirstOrDefault(c => said.Take(c.Words));
        if (found.Words is null)
            return Unread(said, "a figure is below, above, at least or at most another");
        return Limit(said, figure, declared) is { } limit ? new FigureIs(figure, found.Comparison, limit) : null;
    }

    private Limit? Limit(ConditionText said, FigurePart figure, FieldDeclaration declared)
    {
        var factor = Factor(said);
        if (PartOf(said) is { } part)
            return Figure(said) is { } other ? new Limit(factor, new FigurePart(other.Path, part)) : null;
        if (declared.Dimension is null)
            return Count(said);
        var dimension = figure.Part == RangePart.Width
            ? DimensionCatalogue.DifferenceOf(declared.Dimension) : declared.Dimension;
        var any = QuantityText.Parse(dimension.Example, dimension).Value with { Low = null, High = null };
        return _quantities.BindClosed(said.RestInPlace, new(dimension, any, false), declared.Path) is { } bound
            ? new Limit(bound.Value.Low!.Value) : null;
    }

    private Limit? Count(ConditionText said)
    {
        if (int.TryParse(said.Rest, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            return new Limit(number);
        Unread(said, "a whole number is expected at the end");
        return null;
    }

    /// <summary><c>3 times</c>; 1 where nothing is said.</summary>
    private static double Factor(ConditionText said)
    {
        var first = said.FirstWord;
        return double.TryParse(first, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var factor) &&
            said.Take($"{first} times") ? factor : 1;
    }

    private FieldDeclaration? Figure(ConditionText said)
    {
        if (said.TakeAny(fields.Paths) is { } path && fields.Find(path) is { Kind: FieldKind.Figure } declared)
            return declared with { Path = FieldDeclaration.Bare(path) };
        var nearest = EditDistance.Nearest(said.FirstWord, fields.Paths.Order(StringComparer.Ordinal));
        bag.Add(ProofingCodes.NoField, said.Span, ("name", said.FirstWord),
            ("suggestion", nearest is null ? "A figure is expected here, as in care.ph." : $"Did you mean {nearest}?"));
        return null;
    }

    private Condition? Unread(ConditionText said, string reason)
    {
        bag.Add(ProofingCodes.NoCondition, said.Span, ("text", said.Whole), ("reason", reason));
        return null;
    }
}
