using System.Numerics;
using CareSheets.Quantities.Units;

namespace CareSheets.Quantities;

/// <summary>How warm the water is: a place on a scale, so two subtract but do not add.</summary>
/// <remarks>
/// Canonical unit: °C. Not below −273.15 °C (inclusive), no upper limit.
/// Kept as a double, never rounded; equal only when exactly so. Ordered from cold to warm; the
/// default is 0 °C.
/// </remarks>
public readonly struct Temperature
    : IQuantity<Temperature>,
      ISubtractionOperators<Temperature, Temperature, TemperatureDifference>,
      IAdditionOperators<Temperature, TemperatureDifference, Temperature>
{
    private readonly double _celsius;

    private Temperature(double celsius) => _celsius = Dimension.Require(celsius);

    public static Dimension Dimension => DimensionCatalogue.Temperature;

    public double Canonical => _celsius;

    public double InCelsius => _celsius;

    public double InFahrenheit => TemperatureUnits.Fahrenheit.FromCanonical(_celsius);

    public static Temperature FromCanonical(double value) => new(value);

    public static Temperature FromCelsius(double value) => new(value);

    public static Temperature FromFahrenheit(double value) =>
        new(TemperatureUnits.Fahrenheit.ToCanonical(value));

    /// <summary>How far apart two places are; negative when the left is lower.</summary>
    public static TemperatureDifference operator -(Temperature left, Temperature right) =>
        TemperatureDifference.FromCanonical(left._celsius - right._celsius);

    public static Temperature operator +(Temperature left, TemperatureDifference right) =>
        new(left._celsius + right.Canonical);

    public static Temperature operator -(Temperature left, TemperatureDifference right) =>
        new(left._celsius - right.Canonical);

    public static bool operator ==(Temperature left, Temperature right) => left.Equals(right);

    public static bool operator !=(Temperature left, Temperature right) => !left.Equals(right);

    public static bool operator <(Temperature left, Temperature right) =>
        left._celsius < right._celsius;

    public static bool operator >(Temperature left, Temperature right) =>
        left._celsius > right._celsius;

    public static bool operator <=(Temperature left, Temperature right) =>
        left._celsius <= right._celsius;

    public static bool operator >=(Temperature left, Temperature right) =>
        left._celsius >= right._celsius;

    public bool Equals(Temperature other) => _celsius.Equals(other._celsius);

    public override bool Equals(object? obj) => obj is Temperature other && Equals(other);

    public override int GetHashCode() => _celsius.GetHashCode();

    public int CompareTo(Temperature other) => _celsius.CompareTo(other._celsius);

    public override string ToString() => Dimension.Describe(_celsius);
}
