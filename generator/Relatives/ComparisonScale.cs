using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Relatives;

/// <summary>A range as relatives are compared on it: its middle, and the logarithm of its width.</summary>
/// <param name="LogWidth">Nothing for a single figure.</param>
internal readonly record struct ScaledRange(double Middle, double? LogWidth);

/// <summary>
/// The scale of a figure. On a logarithmic one a value v becomes ln(v + start), with the start that
/// the schema declares (Tukey's started logarithm: Tukey 1977, Exploratory Data Analysis, from memory).
/// </summary>
internal sealed class ComparisonScale(CareRangeDeclaration declared)
{
    private bool IsLogarithmic => declared.Scale == RangeScale.Logarithmic;

    /// <summary>
    /// Nothing for a range with an open upper end, whose middle nobody knows. An open lower end
    /// of an amount ends at nothing.
    /// </summary>
    public ScaledRange? Of(StatedRange range)
    {
        var low = range.Low ?? (declared.Dimension.IsPoint ? null : 0);
        return low is { } from && range.High is { } to ? Of(from, to) : null;
    }

    public ScaledRange Of(double low, double high)
    {
        var (from, to) = (To(low), To(high));
        return new ScaledRange((from + to) / 2, to > from ? Math.Log(to - from) : null);
    }

    /// <summary>A canonical value to the scale; values beyond it count as its end.</summary>
    public double To(double value) =>
        IsLogarithmic ? Math.Log(Math.Max(value + declared.ScaleStart, 1e-6)) : value;

    public double From(double scaled) =>
        IsLogarithmic ? Math.Max(0, Math.Exp(scaled) - declared.ScaleStart) : scaled;
}
