using CareSheets.Quantities;

namespace CareSheets.Tankmates;

/// <summary>
/// A range of whichever dimension an entry states it in, ready to compare: all care ranges of the
/// schema, known or yet to come, are judged by the same code.
/// </summary>
/// <remarks>
/// Ends are in the dimension's canonical unit and belong to it; an open end is an infinity. Never
/// inverted. The default is the single value 0.
/// </remarks>
public readonly struct Stretch : IEquatable<Stretch>
{
    private Stretch(double low, double high)
    {
        if (!(low <= high))
            throw new ArgumentOutOfRangeException(nameof(high), high, $"Below the lower end, {low}.");
        (Low, High) = (low, high);
    }

    /// <summary>Minus infinity where no lower end is stated.</summary>
    public double Low { get; }

    /// <summary>Infinity where no upper end is stated.</summary>
    public double High { get; }

    public double Width => High - Low;

    public static bool operator ==(Stretch left, Stretch right) => left.Equals(right);

    public static bool operator !=(Stretch left, Stretch right) => !left.Equals(right);

    /// <exception cref="ArgumentOutOfRangeException">The ends are swapped, or one is NaN.</exception>
    public static Stretch Between(double low, double high) => new(low, high);

    public static Stretch Exactly(double value) => new(value, value);

    public static Stretch From(StatedRange stated) => new(
        stated.Low ?? double.NegativeInfinity, stated.High ?? double.PositiveInfinity);

    /// <summary>What lies in both; touching ends count. Nothing where they are apart.</summary>
    public Stretch? Overlap(Stretch other)
    {
        var (low, high) = (Math.Max(Low, other.Low), Math.Min(High, other.High));
        return low <= high ? new Stretch(low, high) : null;
    }

    public bool Contains(double value) => value >= Low && value <= High;

    public bool Equals(Stretch other) => Low.Equals(other.Low) && High.Equals(other.High);

    public override bool Equals(object? obj) => obj is Stretch other && Equals(other);

    public override int GetHashCode() => HashCode.Combine(Low, High);
}
