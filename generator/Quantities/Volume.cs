using CareSheets.Quantities.Units;

namespace CareSheets.Quantities;

/// <summary>How much water a tank holds.</summary>
/// <remarks>
/// Canonical unit: L. Not negative (0 inclusive), no upper limit.
/// Kept as a double, never rounded; equal only when exactly so. Ordered from small to large; the
/// default is 0 L.
/// </remarks>
public readonly struct Volume : IAmount<Volume>
{
    private readonly double _litres;

    private Volume(double litres) => _litres = Dimension.Require(litres);

    public static Dimension Dimension => DimensionCatalogue.Volume;

    public double Canonical => _litres;

    public double InLitres => _litres;

    public double InUSGallons => VolumeUnits.USGallon.FromCanonical(_litres);

    public double InImperialGallons => VolumeUnits.ImperialGallon.FromCanonical(_litres);

    public static Volume FromCanonical(double value) => new(value);

    public static Volume FromLitres(double value) => new(value);

    public static Volume FromUSGallons(double value) =>
        new(VolumeUnits.USGallon.ToCanonical(value));

    public static Volume FromImperialGallons(double value) =>
        new(VolumeUnits.ImperialGallon.ToCanonical(value));

    /// <summary>Filled to the brim and measured inside; no allowance for glass or gravel.</summary>
    public static Volume OfBox(Length length, Length width, Length height) =>
        new(length.InCentimetres * width.InCentimetres * height.InCentimetres / 1000);

    public static Volume operator +(Volume left, Volume right) =>
        new(left._litres + right._litres);

    public static Volume operator -(Volume left, Volume right) =>
        new(left._litres - right._litres);

    public static Volume operator *(Volume left, double right) => new(left._litres * right);

    public static Volume operator /(Volume left, double right) => new(left._litres / right);

    public static bool operator ==(Volume left, Volume right) => left.Equals(right);

    public static bool operator !=(Volume left, Volume right) => !left.Equals(right);

    public static bool operator <(Volume left, Volume right) => left._litres < right._litres;

    public static bool operator >(Volume left, Volume right) => left._litres > right._litres;

    public static bool operator <=(Volume left, Volume right) => left._litres <= right._litres;

    public static bool operator >=(Volume left, Volume right) => left._litres >= right._litres;

    public bool Equals(Volume other) => _litres.Equals(other._litres);

    public override bool Equals(object? obj) => obj is Volume other && Equals(other);

    public override int GetHashCode() => _litres.GetHashCode();

    public int CompareTo(Volume other) => _litres.CompareTo(other._litres);

    public override string ToString() => Dimension.Describe(_litres);
}
