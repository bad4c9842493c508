using CareSheets.Quantities.Units;

namespace CareSheets.Quantities;

/// <summary>The pressure of the air above the water, where it is, not reduced to sea level.</summary>
/// <remarks>
/// Canonical unit: kPa. Not negative (0 inclusive), no upper limit.
/// Kept as a double, never rounded; equal only when exactly so. Ordered from thin air to dense; the
/// default is a vacuum.
/// </remarks>
public readonly struct Pressure : IAmount<Pressure>
{
    private readonly double _kilopascals;

    private Pressure(double kilopascals) => _kilopascals = Dimension.Require(kilopascals);

    public static Dimension Dimension => DimensionCatalogue.Pressure;

    public double Canonical => _kilopascals;

    public double InKilopascals => _kilopascals;

    public double InAtmospheres => AirUnits.Atmosphere.FromCanonical(_kilopascals);

    public static Pressure FromCanonical(double value) => new(value);

    public static Pressure FromKilopascals(double value) => new(value);

    public static Pressure FromAtmospheres(double value) =>
        new(AirUnits.Atmosphere.ToCanonical(value));

    public static Pressure operator +(Pressure left, Pressure right) =>
        new(left._kilopascals + right._kilopascals);

    public static Pressure operator -(Pressure left, Pressure right) =>
        new(left._kilopascals - right._kilopascals);

    public static Pressure operator *(Pressure left, double right) => new(left._kilopascals * right);

    public static Pressure operator /(Pressure left, double right) => new(left._kilopascals / right);

    public static bool operator ==(Pressure left, Pressure right) => left.Equals(right);

    public static bool operator !=(Pressure left, Pressure right) => !left.Equals(right);

    public static bool operator <(Pressure left, Pressure right) => left._kilopascals < right._kilopascals;

    public static bool operator >(Pressure left, Pressure right) => left._kilopascals > right._kilopascals;

    public static bool operator <=(Pressure left, Pressure right) => left._kilopascals <= right._kilopascals;

    public static bool operator >=(Pressure left, Pressure right) => left._kilopascals >= right._kilopascals;

    public bool Equals(Pressure other) => _kilopascals.Equals(other._kilopascals);

    public override bool Equals(object? obj) => obj is Pressure other && Equals(other);

    public override int GetHashCode() => _kilopascals.GetHashCode();

    public int CompareTo(Pressure other) => _kilopascals.CompareTo(other._kilopascals);

    public override string ToString() => Dimension.Describe(_kilopascals);
}
