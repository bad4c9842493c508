using System.Diagnostics.CodeAnalysis;

namespace CareSheets.Quantities;

/// <summary>
/// All values between two ends, which belong to it; either end may be missing.
/// </summary>
/// <remarks>
/// Never inverted. The default has no ends: it says nothing and contains everything.
/// </remarks>
/// <typeparam name="T">What is measured.</typeparam>
[SuppressMessage("Design", "CA1000", Justification = "A class beside it would hide System.Range.")]
public readonly struct Range<T> : IEquatable<Range<T>>
    where T : struct, IQuantity<T>
{
    private Range(T? min, T? max)
    {
        if (min > max)
        {
            throw new ArgumentOutOfRangeException(nameof(max), max, $"Below the minimum, {min}.");
        }

        (Min, Max) = (min, max);
    }

    public T? Min { get; }

    public T? Max { get; }

    public bool HasMin => Min.HasValue;

    public bool HasMax => Max.HasValue;

    /// <summary>One value, not a stretch of them.</summary>
    public bool IsSingle => HasMin && HasMax && Min.Equals(Max);

    public static Range<T> Exactly(T value) => new(value, value);

    /// <exception cref="ArgumentOutOfRangeException">The ends are swapped.</exception>
    public static Range<T> Between(T min, T max) => new(min, max);

    public static Range<T> AtLeast(T min) => new(min, null);

    public static Range<T> AtMost(T max) => new(null, max);

    public static bool operator ==(Range<T> left, Range<T> right) => left.Equals(right);

    public static bool operator !=(Range<T> left, Range<T> right) => !left.Equals(right);

    // Comparing with a missing end is false either way, so each test asks what would exclude.
    public bool Contains(T value) => !(value < Min) && !(value > Max);

    /// <summary>Whether nothing of the other lies outside this one.</summary>
    public bool Contains(Range<T> other) =>
        (!HasMin || other.Min >= Min) && (!HasMax || other.Max <= Max);

    /// <summary>Whether one value at least lies in both; touching ends count.</summary>
    public bool Overlaps(Range<T> other) => !(Max < other.Min) && !(other.Max < Min);

    /// <summary>What lies in both, or nothing.</summary>
    public Range<T>? Intersect(Range<T> other) => Overlaps(other)
        ? new Range<T>(other.Min > Min || !HasMin ? other.Min : Min,
                       other.Max < Max || !HasMax ? other.Max : Max)
        : null;

    /// <summary>The smallest range that contains both; it covers any gap between them.</summary>
    public Range<T> Hull(Range<T> other) =>
        new(other.Min < Min || !other.HasMin ? other.Min : Min,
            other.Max > Max || !other.HasMax ? other.Max : Max);

    public bool Equals(Range<T> other) =>
        Nullable.Equals(Min, other.Min) && Nullable.Equals(Max, other.Max);

    public override bool Equals(object? obj) => obj is Range<T> other && Equals(other);

    public override int GetHashCode() => HashCode.Combine(Min, Max);

    public override string ToString() => $"[{Min?.ToString() ?? "…"}, {Max?.ToString() ?? "…"}]";
}
