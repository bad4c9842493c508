using CareSheets.Species;

namespace CareSheets.Rules;

/// <summary>Which number of a range is meant.</summary>
public enum RangePart
{
    Lowest,
    Highest,
    Width,
}

/// <summary>How one number stands to another.</summary>
public enum Comparison
{
    Below,
    Above,
    AtLeast,
    AtMost,
}

/// <summary>One number of a figure's range beside a limit.</summary>
public sealed record FigureIs(FigurePart Figure, Comparison Comparison, Limit Limit) : Condition
{
    public override Truth Judge(EntryFields entry) =>
        Figure.In(entry) is { } value && Limit.In(entry) is { } limit
            ? Connective.Of(Holds(value, limit)) : Truth.Open;

    public override IEnumerable<string> Fields => Limit.Of is { } other ? [Figure.Field, other.Field] : [Figure.Field];

    /// <summary>Figures are converted from what was typed: a last bit must not decide.</summary>
    private bool Holds(double value, double limit)
    {
        var slack = 1e-9 * Math.Max(1, double.IsFinite(limit) ? Math.Abs(limit) : 1);
        return Comparison switch
        {
            Comparison.Below => value < limit - slack,
            Comparison.Above => value > limit + slack,
            Comparison.AtLeast => value >= limit - slack,
            Comparison.AtMost => value <= limit + slack,
        };
    }
}

/// <summary>A number beside which figures are held: a fixed one, or some times another figure of the entry.</summary>
/// <param name="Value">In the canonical unit, or the factor of the other figure.</param>
public sealed record Limit(double Value, FigurePart? Of = null)
{
    public double? In(EntryFields entry) => Of is null ? Value : Value * Of.In(entry);
}
