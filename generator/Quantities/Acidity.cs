using System.Numerics;

namespace CareSheets.Quantities;

/// <summary>
/// The pH of the water: a place on a logarithmic scale, so neither sums nor means are offered.
/// </summary>
/// <remarks>
/// Canonical unit: pH, 0 to 14 (both inclusive).
/// Kept as a double, never rounded; equal only when exactly so. Ordered from acid to alkaline;
/// the default, pH 0, is no water of ours: do not rely on it.
/// </remarks>
public readonly struct Acidity
    : IQuantity<Acidity>,
      ISubtractionOperators<Acidity, Acidity, AcidityDifference>,
      IAdditionOperators<Acidity, AcidityDifference, Acidity>
{
    private readonly double _pH;

    private Acidity(double pH) => _pH = Dimension.Require(pH);

    public static Dimension Dimension => DimensionCatalogue.Acidity;

    public double Canonical => _pH;

    public double InPH => _pH;

    public static Acidity FromCanonical(double value) => new(value);

    public static Acidity FromPH(double value) => new(value);

    /// <summary>How far apart two places are; negative when the left is lower.</summary>
    public static AcidityDifference operator -(Acidity left, Acidity right) =>
        AcidityDifference.FromCanonical(left._pH - right._pH);

    public static Acidity operator +(Acidity left, AcidityDifference right) =>
        new(left._pH + right.Canonical);

    public static Acidity operator -(Acidity left, AcidityDifference right) =>
        new(left._pH - right.Canonical);

    public static bool operator ==(Acidity left, Acidity right) => left.Equals(right);

    public static bool operator !=(Acidity left, Acidity right) => !left.Equals(right);

    public static bool operator <(Acidity left, Acidity right) => left._pH < right._pH;

    public static bool operator >(Acidity left, Acidity right) => left._pH > right._pH;

    public static bool operator <=(Acidity left, Acidity right) => left._pH <= right._pH;

    public static bool operator >=(Acidity left, Acidity right) => left._pH >= right._pH;

    public bool Equals(Acidity other) => _pH.Equals(other._pH);

    public override bool Equals(object? obj) => obj is Acidity other && Equals(other);

    public override int GetHashCode() => _pH.GetHashCode();

    public int CompareTo(Acidity other) => _pH.CompareTo(other._pH);

    public override string ToString() => Dimension.Describe(_pH);
}
