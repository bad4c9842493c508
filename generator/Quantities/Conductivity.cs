namespace CareSheets.Quantities;

/// <summary>How well the water conducts, as a measure of all that is dissolved.</summary>
/// <remarks>
/// Canonical unit: µS/cm, referred to 25 °C. Not negative (0 inclusive), no upper limit.
/// Kept as a double, never rounded; equal only when exactly so. Ordered from pure to salty; the
/// default is 0 µS/cm. Adding belongs to mixing equal parts, and is only approximate: ions hinder
/// one another.
/// </remarks>
public readonly struct Conductivity : IAmount<Conductivity>
{
    private readonly double _microsiemens;

    private Conductivity(double microsiemens) => _microsiemens = Dimension.Require(microsiemens);

    public static Dimension Dimension => DimensionCatalogue.Conductivity;

    public double Canonical => _microsiemens;

    public double InMicrosiemensPerCentimetre => _microsiemens;

    public static Conductivity FromCanonical(double value) => new(value);

    public static Conductivity FromMicrosiemensPerCentimetre(double value) => new(value);

    public static Conductivity operator +(Conductivity left, Conductivity right) =>
        new(left._microsiemens + right._microsiemens);

    public static Conductivity operator -(Conductivity left, Conductivity right) =>
        new(left._microsiemens - right._microsiemens);

    public static Conductivity operator *(Conductivity left, double right) =>
        new(left._microsiemens * right);

    public static Conductivity operator /(Conductivity left, double right) =>
        new(left._microsiemens / right);

    public static bool operator ==(Conductivity left, Conductivity right) => left.Equals(right);

    public static bool operator !=(Conductivity left, Conductivity right) => !left.Equals(right);

    public static bool operator <(Conductivity left, Conductivity right) =>
        left._microsiemens < right._microsiemens;

    public static bool operator >(Conductivity left, Conductivity right) =>
        left._microsiemens > right._microsiemens;

    public static bool operator <=(Conductivity left, Conductivity right) =>
        left._microsiemens <= right._microsiemens;

    public static bool operator >=(Conductivity left, Conductivity right) =>
        left._microsiemens >= right._microsiemens;

    public bool Equals(Conductivity other) => _microsiemens.Equals(other._microsiemens);

    public override bool Equals(object? obj) => obj is Conductivity other && Equals(other);

    public override int GetHashCode() => _microsiemens.GetHashCode();

    public int CompareTo(Conductivity other) => _microsiemens.CompareTo(other._microsiemens);

    public override string ToString() => Dimension.Describe(_microsiemens);
}
