using CareSheets.Quantities.Notation;

namespace CareSheets.Quantities;

/// <summary>Ranges for readers, in the units they use.</summary>
public static class QuantityFormat
{
    /// <summary>
    /// The writer's own text if these readers use its unit (for both: always), else translated and
    /// rounded to the step people use in that unit.
    /// </summary>
    public static ShownRange In(StatedRange range, UnitSystem system, Rounding rounding)
    {
        ArgumentNullException.ThrowIfNull(range);
        return range.Unit.Serves(system)
            ? new ShownRange(range.Text, IsApproximate: false)
            : Translate(range, range.Dimension.For(system), rounding);
    }

    /// <summary>
    /// A range that nobody typed, such as an estimate, rounded in the same way; empty text for one
    /// without ends. The end of an open one belongs to it: ≤ or ≥.
    /// </summary>
    public static ShownRange Computed<T>(Range<T> range, UnitSystem system, Rounding rounding)
        where T : struct, IQuantity<T> =>
        Computed(T.Dimension, range.Min?.Canonical, range.Max?.Canonical, system, rounding);

    /// <summary>The same for ends in the canonical unit of a dimension known only at run time.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An impossible value, or swapped ends.</exception>
    public static ShownRange Computed(
        Dimension dimension, double? low, double? high, UnitSystem system, Rounding rounding)
    {
        ArgumentNullException.ThrowIfNull(dimension);
        if (low is null && high is null)
        {
            return new ShownRange(string.Empty, IsApproximate: false);
        }

        ArgumentOutOfRangeException.ThrowIfGreaterThan(low ?? double.MinValue, high ?? double.MaxValue);
        var unit = dimension.For(system);
        var bound = high is null ? Bound.AtOrAbove : low is null ? Bound.AtOrBelow : Bound.None;
        var ends = new Ends(Require(dimension, low), Require(dimension, high)).In(unit);
        return Show(ends, bound, unit, basis: null, rounding, dimension.IsPoint);
    }

    /// <summary>The ends of a range that nobody typed, as they are shown.</summary>
    /// <returns>In the canonical unit, so that another system can tell the same figure.</returns>
    public static (double? Low, double? High) Tidied(
        Dimension dimension, double? low, double? high, UnitSystem system, Rounding rounding)
    {
        ArgumentNullException.ThrowIfNull(dimension);
        var unit = dimension.For(system);
        var rounded = Rounded(new Ends(low, high).In(unit), unit, rounding, dimension.IsPoint);
        return (Canonical(rounded.Low), Canonical(rounded.High));

        double? Canonical(double? end) =>
            end is { } shown ? Math.Clamp(unit.ToCanonical(shown), dimension.Minimum, dimension.Maximum) : null;
    }

    private static Ends Rounded(Ends ends, Unit unit, Rounding rounding, bool zeroIsValue) =>
        ends.Round(unit, Direction(ends, rounding), zeroIsValue);

    /// <summary>One figure has no inside.</summary>
    private static Rounding Direction(Ends ends, Rounding rounding) =>
        rounding == Rounding.Inward && ends.IsSingle ? Rounding.Nearest : rounding;

    private static double? Require(Dimension dimension, double? end) =>
        end is { } value ? dimension.Require(value) : null;

    private static ShownRange Translate(StatedRange range, Unit unit, Rounding rounding)
    {
        var ends = new Ends(range.Low, range.High).In(unit);
        return Show(ends, range.Bound, unit, range.Basis, rounding, range.Dimension.IsPoint);
    }

    private static ShownRange Show(
        Ends ends, Bound bound, Unit unit, LengthBasis? basis, Rounding rounding, bool zeroIsValue)
    {
        var direction = Direction(ends, rounding);
        var rounded = Rounded(ends, unit, rounding, zeroIsValue);
        var figures = RangeText.Figures(
            rounded.Low is { } low ? Figure.Write(low) : null,
            rounded.High is { } high ? Figure.Write(high) : null);
        return new ShownRange(
            RangeText.Write(bound, figures, unit, basis),
            direction == Rounding.Nearest && !rounded.IsCloseTo(ends));
    }
}
