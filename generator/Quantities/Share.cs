namespace CareSheets.Quantities;

/// <summary>A part of a whole, such as the water that one change replaces.</summary>
/// <remarks>
/// Canonical unit: %. Between 0 and 100 (both inclusive).
/// Kept as a double, never rounded; equal only when exactly so. Adding two throws beyond the whole.
/// The default is nothing of it.
/// </remarks>
public readonly struct Share : IAmount<Share>
{
    private readonly double _percent;

    private Share(double percent) => _percent = Dimension.Require(percent);

    public static Dimension Dimension => DimensionCatalogue.Share;

    public double Canonical => _percent;

    public double InPercent => _percent;

    /// <summary>Between 0 and 1.</summary>
    public double InParts => _percent / 100;

    public static Share FromCanonical(double value) => new(value);

    public static Share FromPercent(double value) => new(value);

    /// <summary>From a figure between 0 and 1.</summary>
    public static Share FromParts(double value) => new(value * 100);

    public static Share operator +(Share left, Share right) =>
        new(left._percent + right._percent);

    public static Share operator -(Share left, Share right) =>
        new(left._percent - right._percent);

    public static Share operator *(Share left, double right) => new(left._percent * right);

    public static Share operator /(Share left, double right) => new(left._percent / right);

    public static bool operator ==(Share left, Share right) => left.Equals(right);

    public static bool operator !=(Share left, Share right) => !left.Equals(right);

    public static bool operator <(Share left, Share right) => left._percent < right._percent;

    public static bool operator >(Share left, Share right) => left._percent > right._percent;

    public static bool operator <=(Share left, Share right) => left._percent <= right._percent;

    public static bool operator >=(Share left, Share right) => left._percent >= right._percent;

    public bool Equals(Share other) => _percent.Equals(other._percent);

    public override bool Equals(object? obj) => obj is Share other && Equals(other);

    public override int GetHashCode() => _percent.GetHashCode();

    public int CompareTo(Share other) => _percent.CompareTo(other._percent);

    public override string ToString() => Dimension.Describe(_percent);
}
