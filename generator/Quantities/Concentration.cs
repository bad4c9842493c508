namespace CareSheets.Quantities;

/// <summary>How much of a gas or salt is dissolved in a litre of fresh water.</summary>
/// <remarks>
/// Canonical unit: mg/L. Not negative (0 inclusive), no upper limit. Of which substance, the place
/// that holds it says; for ammonia, where that is always in doubt, there is <see cref="Ammonia"/>.
/// Kept as a double, never rounded; equal only when exactly so. The default is none.
/// </remarks>
public readonly struct Concentration : IAmount<Concentration>
{
    private readonly double _mgPerLitre;

    private Concentration(double mgPerLitre) => _mgPerLitre = Dimension.Require(mgPerLitre);

    public static Dimension Dimension => DimensionCatalogue.Concentration;

    public double Canonical => _mgPerLitre;

    public double InMilligramsPerLitre => _mgPerLitre;

    public static Concentration FromCanonical(double value) => new(value);

    public static Concentration FromMilligramsPerLitre(double value) => new(value);

    public static Concentration operator +(Concentration left, Concentration right) =>
        new(left._mgPerLitre + right._mgPerLitre);

    public static Concentration operator -(Concentration left, Concentration right) =>
        new(left._mgPerLitre - right._mgPerLitre);

    public static Concentration operator *(Concentration left, double right) => new(left._mgPerLitre * right);

    public static Concentration operator /(Concentration left, double right) => new(left._mgPerLitre / right);

    public static bool operator ==(Concentration left, Concentration right) => left.Equals(right);

    public static bool operator !=(Concentration left, Concentration right) => !left.Equals(right);

    public static bool operator <(Concentration left, Concentration right) => left._mgPerLitre < right._mgPerLitre;

    public static bool operator >(Concentration left, Concentration right) => left._mgPerLitre > right._mgPerLitre;

    public static bool operator <=(Concentration left, Concentration right) => left._mgPerLitre <= right._mgPerLitre;

    public static bool operator >=(Concentration left, Concentration right) => left._mgPerLitre >= right._mgPerLitre;

    public bool Equals(Concentration other) => _mgPerLitre.Equals(other._mgPerLitre);

    public override bool Equals(object? obj) => obj is Concentration other && Equals(other);

    public override int GetHashCode() => _mgPerLitre.GetHashCode();

    public int CompareTo(Concentration other) => _mgPerLitre.CompareTo(other._mgPerLitre);

    public override string ToString() => Dimension.Describe(_mgPerLitre);
}
