using CareSheets.Quantities.Units;

namespace CareSheets.Quantities;

/// <summary>
/// How far apart two temperatures are: a swing, a step, a tolerance. It has no 32 in it.
/// </summary>
/// <remarks>
/// Canonical unit: K, the same size as a degree Celsius. May be negative.
/// Kept as a double, never rounded; equal only when exactly so. Ordered from negative to
/// positive; the default is no difference.
/// </remarks>
public readonly struct TemperatureDifference : IAmount<TemperatureDifference>
{
    private readonly double _kelvins;

    private TemperatureDifference(double kelvins) => _kelvins = Dimension.Require(kelvins);

    public static Dimension Dimension => DimensionCatalogue.TemperatureDifference;

    public double Canonical => _kelvins;

    public double InKelvins => _kelvins;

    public double InFahrenheit => TemperatureUnits.FahrenheitDegree.FromCanonical(_kelvins);

    public static TemperatureDifference FromCanonical(double value) => new(value);

    public static TemperatureDifference FromKelvins(double value) => new(value);

    public static TemperatureDifference FromFahrenheit(double value) =>
        new(TemperatureUnits.FahrenheitDegree.ToCanonical(value));

    public static TemperatureDifference operator +(
        TemperatureDifference left, TemperatureDifference right) =>
        new(left._kelvins + right._kelvins);

    public static TemperatureDifference operator -(
        TemperatureDifference left, TemperatureDifference right) =>
        new(left._kelvins - right._kelvins);

    public static TemperatureDifference operator *(TemperatureDifference left, double right) =>
        new(left._kelvins * right);

    public static TemperatureDifference operator /(TemperatureDifference left, double right) =>
        new(left._kelvins / right);

    public static bool operator ==(TemperatureDifference left, TemperatureDifference right) =>
        left.Equals(right);

    public static bool operator !=(TemperatureDifference left, TemperatureDifference right) =>
        !left.Equals(right);

    public static bool operator <(TemperatureDifference left, TemperatureDifference right) =>
        left._kelvins < right._kelvins;

    public static bool operator >(TemperatureDifference left, TemperatureDifference right) =>
        left._kelvins > right._kelvins;

    public static bool operator <=(TemperatureDifference left, TemperatureDifference right) =>
        left._kelvins <= right._kelvins;

    public static bool operator >=(TemperatureDifference left, TemperatureDifference right) =>
        left._kelvins >= right._kelvins;

    public bool Equals(TemperatureDifference other) => _kelvins.Equals(other._kelvins);

    public override bool Equals(object? obj) =>
        obj is TemperatureDifference other && Equals(other);

    public override int GetHashCode() => _kelvins.GetHashCode();

    public int CompareTo(TemperatureDifference other) => _kelvins.CompareTo(other._kelvins);

    public override string ToString() => Dimension.Describe(_kelvins);
}
