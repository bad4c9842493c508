namespace CareSheets.Quantities;

/// <summary>How much salt is dissolved in a litre of the water.</summary>
/// <remarks>
/// Canonical unit: g/L. Not negative (0 inclusive), no upper limit.
/// Kept as a double, never rounded; equal only when exactly so. Ordered from fresh to salty; the
/// default is 0 g/L.
/// </remarks>
public readonly struct Salinity : IAmount<Salinity>
{
    /// <summary>Water with less salt than this, in g/L, is fresh: common practice of limnology, no source.</summary>
    public const double FreshUpTo = 0.5;

    private readonly double _gramsPerLitre;

    private Salinity(double gramsPerLitre) => _gramsPerLitre = Dimension.Require(gramsPerLitre);

    public static Dimension Dimension => DimensionCatalogue.Salinity;

    public double Canonical => _gramsPerLitre;

    public double InGramsPerLitre => _gramsPerLitre;

    public static Salinity FromCanonical(double value) => new(value);

    public static Salinity FromGramsPerLitre(double value) => new(value);

    public static Salinity operator +(Salinity left, Salinity right) =>
        new(left._gramsPerLitre + right._gramsPerLitre);

    public static Salinity operator -(Salinity left, Salinity right) =>
        new(left._gramsPerLitre - right._gramsPerLitre);

    public static Salinity operator *(Salinity left, double right) =>
        new(left._gramsPerLitre * right);

    public static Salinity operator /(Salinity left, double right) =>
        new(left._gramsPerLitre / right);

    public static bool operator ==(Salinity left, Salinity right) => left.Equals(right);

    public static bool operator !=(Salinity left, Salinity right) => !left.Equals(right);

    public static bool operator <(Salinity left, Salinity right) =>
        left._gramsPerLitre < right._gramsPerLitre;

    public static bool operator >(Salinity left, Salinity right) =>
        left._gramsPerLitre > right._gramsPerLitre;

    public static bool operator <=(Salinity left, Salinity right) =>
        left._gramsPerLitre <= right._gramsPerLitre;

    public static bool operator >=(Salinity left, Salinity right) =>
        left._gramsPerLitre >= right._gramsPerLitre;

    public bool Equals(Salinity other) => _gramsPerLitre.Equals(other._gramsPerLitre);

    public override bool Equals(object? obj) => obj is Salinity other && Equals(other);

    public override int GetHashCode() => _gramsPerLitre.GetHashCode();

    public int CompareTo(Salinity other) => _gramsPerLitre.CompareTo(other._gramsPerLitre);

    public override string ToString() => Dimension.Describe(_gramsPerLitre);
}
