namespace CareSheets.Quantities;

/// <summary>
/// How many pH steps lie between two waters; one step is a factor of ten in hydrogen ions.
/// </summary>
/// <remarks>
/// Canonical unit: pH, −14 to 14 (both inclusive).
/// Kept as a double, never rounded; equal only when exactly so. Ordered from negative to
/// positive; the default is no difference.
/// </remarks>
public readonly struct AcidityDifference : IAmount<AcidityDifference>
{
    private readonly double _pH;

    private AcidityDifference(double pH) => _pH = Dimension.Require(pH);

    public static Dimension Dimension => DimensionCatalogue.AcidityDifference;

    public double Canonical => _pH;

    public double InPH => _pH;

    public static AcidityDifference FromCanonical(double value) => new(value);

    public static AcidityDifference FromPH(double value) => new(value);

    public static AcidityDifference operator +(AcidityDifference left, AcidityDifference right) =>
        new(left._pH + right._pH);

    public static AcidityDifference operator -(AcidityDifference left, AcidityDifference right) =>
        new(left._pH - right._pH);

    public static AcidityDifference operator *(AcidityDifference left, double right) =>
        new(left._pH * right);

    public static AcidityDifference operator /(AcidityDifference left, double right) =>
        new(left._pH / right);

    public static bool operator ==(AcidityDifference left, AcidityDifference right) =>
        left.Equals(right);

    public static bool operator !=(AcidityDifference left, AcidityDifference right) =>
        !left.Equals(right);

    public static bool operator <(AcidityDifference left, AcidityDifference right) =>
        left._pH < right._pH;

    public static bool operator >(AcidityDifference left, AcidityDifference right) =>
        left._pH > right._pH;

    public static bool operator <=(AcidityDifference left, AcidityDifference right) =>
        left._pH <= right._pH;

    public static bool operator >=(AcidityDifference left, AcidityDifference right) =>
        left._pH >= right._pH;

    public bool Equals(AcidityDifference other) => _pH.Equals(other._pH);

    public override bool Equals(object? obj) => obj is AcidityDifference other && Equals(other);

    public override int GetHashCode() => _pH.GetHashCode();

    public int CompareTo(AcidityDifference other) => _pH.CompareTo(other._pH);

    public override string ToString() => Dimension.Describe(_pH);
}
