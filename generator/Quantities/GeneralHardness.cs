using CareSheets.Quantities.Units;

namespace CareSheets.Quantities;

/// <summary>Calcium and magnesium in the water.</summary>
/// <remarks>
/// Canonical unit: mg/L CaCO₃. Not negative (0 inclusive), no upper limit.
/// A millimole is one of Ca²⁺ or Mg²⁺, 100.0869 mg/L CaCO₃. Kept as a double, never rounded;
/// equal only when exactly so. Ordered from soft to hard; the default is none.
/// </remarks>
public readonly struct GeneralHardness : IAmount<GeneralHardness>
{
    private readonly double _mgPerLitre;

    private GeneralHardness(double mgPerLitre) => _mgPerLitre = Dimension.Require(mgPerLitre);

    public static Dimension Dimension => DimensionCatalogue.GeneralHardness;

    public double Canonical => _mgPerLitre;

    public double InMilligramsPerLitre => _mgPerLitre;

    public double InGermanDegrees => HardnessUnits.GermanDegree.FromCanonical(_mgPerLitre);

    public double InFrenchDegrees => HardnessUnits.FrenchDegree.FromCanonical(_mgPerLitre);

    public double InClarkDegrees => HardnessUnits.ClarkDegree.FromCanonical(_mgPerLitre);

    public double InGrainsPerGallon => HardnessUnits.GrainPerGallon.FromCanonical(_mgPerLitre);

    public double InMillimoles => HardnessUnits.MillimoleOfIons.FromCanonical(_mgPerLitre);

    public static GeneralHardness FromCanonical(double value) => new(value);

    public static GeneralHardness FromMilligramsPerLitre(double value) => new(value);

    public static GeneralHardness FromGermanDegrees(double value) =>
        new(HardnessUnits.GermanDegree.ToCanonical(value));

    public static GeneralHardness FromFrenchDegrees(double value) =>
        new(HardnessUnits.FrenchDegree.ToCanonical(value));

    public static GeneralHardness FromClarkDegrees(double value) =>
        new(HardnessUnits.ClarkDegree.ToCanonical(value));

    public static GeneralHardness FromGrainsPerGallon(double value) =>
        new(HardnessUnits.GrainPerGallon.ToCanonical(value));

    public static GeneralHardness FromMillimoles(double value) =>
        new(HardnessUnits.MillimoleOfIons.ToCanonical(value));

    public static GeneralHardness operator +(GeneralHardness left, GeneralHardness right) =>
        new(left._mgPerLitre + right._mgPerLitre);

    public static GeneralHardness operator -(GeneralHardness left, GeneralHardness right) =>
        new(left._mgPerLitre - right._mgPerLitre);

    public static GeneralHardness operator *(GeneralHardness left, double right) =>
        new(left._mgPerLitre * right);

    public static GeneralHardness operator /(GeneralHardness left, double right) =>
        new(left._mgPerLitre / right);

    public static bool operator ==(GeneralHardness left, GeneralHardness right) =>
        left.Equals(right);

    public static bool operator !=(GeneralHardness left, GeneralHardness right) =>
        !left.Equals(right);

    public static bool operator <(GeneralHardness left, GeneralHardness right) =>
        left._mgPerLitre < right._mgPerLitre;

    public static bool operator >(GeneralHardness left, GeneralHardness right) =>
        left._mgPerLitre > right._mgPerLitre;

    public static bool operator <=(GeneralHardness left, GeneralHardness right) =>
        left._mgPerLitre <= right._mgPerLitre;

    public static bool operator >=(GeneralHardness left, GeneralHardness right) =>
        left._mgPerLitre >= right._mgPerLitre;

    public bool Equals(GeneralHardness other) => _mgPerLitre.Equals(other._mgPerLitre);

    public override bool Equals(object? obj) => obj is GeneralHardness other && Equals(other);

    public override int GetHashCode() => _mgPerLitre.GetHashCode();

    public int CompareTo(GeneralHardness other) => _mgPerLitre.CompareTo(other._mgPerLitre);

    public override string ToString() => Dimension.Describe(_mgPerLitre);
}
