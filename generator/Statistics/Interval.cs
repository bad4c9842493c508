namespace CareSheets.Statistics;

/// <summary>A closed stretch of numbers from low to high.</summary>
public readonly record struct Interval
{
    private Interval(double low, double high)
    {
        Low = low;
        High = high;
    }

    public double Low { get; }

    public double High { get; }

    public double Width => High - Low;

    /// <exception cref="ArgumentOutOfRangeException">NaN, infinite or reversed.</exception>
    public static Interval Between(double low, double high)
    {
        Require.Finite(low);
        Require.Finite(high);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(low, high);
        return new Interval(low, high);
    }

    /// <summary>Both ends belong to it.</summary>
    public bool Contains(double value) => value >= Low && value <= High;

    /// <summary>
    /// The interval score of a central interval of the given coverage 1 - α: its width plus 2/α
    /// times the distance by which it missed. Small is good. Gneiting and Raftery 2007, JASA
    /// 102:359-378, with the sign turned.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A coverage not between 0 and 1, or a value that is not finite.
    /// </exception>
    public double Score(double value, double coverage)
    {
        Require.Finite(value);
        var alpha = 1 - Require.Share(coverage);
        var miss = Math.Max(0, Low - value) + Math.Max(0, value - High);
        return Width + 2 / alpha * miss;
    }
}
