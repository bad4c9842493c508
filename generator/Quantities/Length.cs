using CareSheets.Quantities.Units;

namespace CareSheets.Quantities;

/// <summary>
/// The size of a fish or the side of a tank; on which basis a fish was measured stays outside.
/// </summary>
/// <remarks>
/// Canonical unit: cm. Not negative (0 inclusive), no upper limit.
/// Kept as a double, never rounded; equal only when exactly so. Ordered from short to long; the
/// default is 0 cm.
/// </remarks>
public readonly struct Length : IAmount<Length>
{
    private readonly double _centimetres;

    private Length(double centimetres) => _centimetres = Dimension.Require(centimetres);

    public static Dimension Dimension => DimensionCatalogue.Length;

    public double Canonical => _centimetres;

    public double InCentimetres => _centimetres;

    public double InMillimetres => LengthUnits.Millimetre.FromCanonical(_centimetres);

    public double InInches => LengthUnits.Inch.FromCanonical(_centimetres);

    public static Length FromCanonical(double value) => new(value);

    public static Length FromCentimetres(double value) => new(value);

    public static Length FromMillimetres(double value) =>
        new(LengthUnits.Millimetre.ToCanonical(value));

    public static Length FromInches(double value) => new(LengthUnits.Inch.ToCanonical(value));

    public static Length operator +(Length left, Length right) =>
        new(left._centimetres + right._centimetres);

    public static Length operator -(Length left, Length right) =>
        new(left._centimetres - right._centimetres);

    public static Length operator *(Length left, double right) => new(left._centimetres * right);

    public static Length operator /(Length left, double right) => new(left._centimetres / right);

    public static bool operator ==(Length left, Length right) => left.Equals(right);

    public static bool operator !=(Length left, Length right) => !left.Equals(right);

    public static bool operator <(Length left, Length right) =>
        left._centimetres < right._centimetres;

    public static bool operator >(Length left, Length right) =>
        left._centimetres > right._centimetres;

    public static bool operator <=(Length left, Length right) =>
        left._centimetres <= right._centimetres;

    public static bool operator >=(Length left, Length right) =>
        left._centimetres >= right._centimetres;

    public bool Equals(Length other) => _centimetres.Equals(other._centimetres);

    public override bool Equals(object? obj) => obj is Length other && Equals(other);

    public override int GetHashCode() => _centimetres.GetHashCode();

    public int CompareTo(Length other) => _centimetres.CompareTo(other._centimetres);

    public override string ToString() => Dimension.Describe(_centimetres);
}
