using CareSheets.Quantities.Units;

namespace CareSheets.Quantities;

/// <summary>
/// How much acid the water can take up, mostly by bicarbonate; never added to general hardness.
/// </summary>
/// <remarks>
/// Canonical unit: mg/L CaCO₃. Not negative (0 inclusive), no upper limit.
/// A millimole is one of acid capacity, 50.04345 mg/L CaCO₃, half of that in general hardness.
/// Kept as a double, never rounded; equal only when exactly so. Ordered from little to much; the
/// default is none.
/// </remarks>
public readonly struct CarbonateHardness : IAmount<CarbonateHardness>
{
    private readonly double _mgPerLitre;

    private CarbonateHardness(double mgPerLitre) => _mgPerLitre = Dimension.Require(mgPerLitre);

    public static Dimension Dimension => DimensionCatalogue.CarbonateHardness;

    public double Canonical => _mgPerLitre;

    public double InMilligramsPerLitre => _mgPerLitre;

    public double InGermanDegrees => HardnessUnits.GermanDegree.FromCanonical(_mgPerLitre);

    public double InFrenchDegrees => HardnessUnits.FrenchDegree.FromCanonical(_mgPerLitre);

    public double InClarkDegrees => HardnessUnits.ClarkDegree.FromCanonical(_mgPerLitre);

    public double InGrainsPerGallon => HardnessUnits.GrainPerGallon.FromCanonical(_mgPerLitre);

    public double InMillimoles =>
        HardnessUnits.MillimoleOfAcidCapacity.FromCanonical(_mgPerLitre);

    public static CarbonateHardness FromCanonical(double value) => new(value);

    public static CarbonateHardness FromMilligramsPerLitre(double value) => new(value);

    public static CarbonateHardness FromGermanDegrees(double value) =>
        new(HardnessUnits.GermanDegree.ToCanonical(value));

    public static CarbonateHardness FromFrenchDegrees(double value) =>
        new(HardnessUnits.FrenchDegree.ToCanonical(value));

    public static CarbonateHardness FromClarkDegrees(double value) =>
        new(HardnessUnits.ClarkDegree.ToCanonical(value));

    public static CarbonateHardness FromGrainsPerGallon(double value) =>
        new(HardnessUnits.GrainPerGallon.ToCanonical(value));

    public static CarbonateHardness FromMillimoles(double value) =>
        new(HardnessUnits.MillimoleOfAcidCapacity.ToCanonical(value));

    public static CarbonateHardness operator +(CarbonateHardness left, CarbonateHardness right) =>
        new(left._mgPerLitre + right._mgPerLitre);

    public static CarbonateHardness operator -(CarbonateHardness left, CarbonateHardness right) =>
        new(left._mgPerLitre - right._mgPerLitre);

    public static CarbonateHardness operator *(CarbonateHardness left, double right) =>
        new(left._mgPerLitre * right);

    public static CarbonateHardness operator /(CarbonateHardness left, double right) =>
        new(left._mgPerLitre / right);

    public static bool operator ==(CarbonateHardness left, CarbonateHardness right) =>
        left.Equals(right);

    public static bool operator !=(CarbonateHardness left, CarbonateHardness right) =>
        !left.Equals(right);

    public static bool operator <(CarbonateHardness left, CarbonateHardness right) =>
        left._mgPerLitre < right._mgPerLitre;

    public static bool operator >(CarbonateHardness left, CarbonateHardness right) =>
        left._mgPerLitre > right._mgPerLitre;

    public static bool operator <=(CarbonateHardness left, CarbonateHardness right) =>
        left._mgPerLitre <= right._mgPerLitre;

    public static bool operator >=(CarbonateHardness left, CarbonateHardness right) =>
        left._mgPerLitre >= right._mgPerLitre;

    public bool Equals(CarbonateHardness other) => _mgPerLitre.Equals(other._mgPerLitre);

    public override bool Equals(object? obj) => obj is CarbonateHardness other && Equals(other);

    public override int GetHashCode() => _mgPerLitre.GetHashCode();

    public int CompareTo(CarbonateHardness other) => _mgPerLitre.CompareTo(other._mgPerLitre);

    public override string ToString() => Dimension.Describe(_mgPerLitre);
}
