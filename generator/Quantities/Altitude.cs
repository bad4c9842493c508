namespace CareSheets.Quantities;

/// <summary>How high above the sea a place lies, for the pressure of its air.</summary>
/// <remarks>
/// Canonical unit: m above sea level. Between −500 and 9000 (both inclusive), which is all land there
/// is. Kept as a double, never rounded; equal only when exactly so. Ordered from low to high; the
/// default is the level of the sea.
/// </remarks>
public readonly struct Altitude : IQuantity<Altitude>
{
    private readonly double _metres;

    private Altitude(double metres) => _metres = Dimension.Require(metres);

    public static Dimension Dimension => DimensionCatalogue.Altitude;

    public double Canonical => _metres;

    public double InMetres => _metres;

    public static Altitude FromCanonical(double value) => new(value);

    public static Altitude FromMetres(double value) => new(value);

    public static bool operator ==(Altitude left, Altitude right) => left.Equals(right);

    public static bool operator !=(Altitude left, Altitude right) => !left.Equals(right);

    public static bool operator <(Altitude left, Altitude right) => left._metres < right._metres;

    public static bool operator >(Altitude left, Altitude right) => left._metres > right._metres;

    public static bool operator <=(Altitude left, Altitude right) => left._metres <= right._metres;

    public static bool operator >=(Altitude left, Altitude right) => left._metres >= right._metres;

    public bool Equals(Altitude other) => _metres.Equals(other._metres);

    public override bool Equals(object? obj) => obj is Altitude other && Equals(other);

    public override int GetHashCode() => _metres.GetHashCode();

    public int CompareTo(Altitude other) => _metres.CompareTo(other._metres);

    public override string ToString() => Dimension.Describe(_metres);
}
