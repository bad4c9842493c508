using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>The mean pressure of the air at a height, for places that have no barometer.</summary>
/// <remarks>
/// ICAO / US Standard Atmosphere 1976, below 11 km: P ÷ atm = (1 − 2.25577·10⁻⁵ h)^5.25588 (from
/// memory). Weather moves it by some 3 % either way.
/// </remarks>
public static class StandardAtmosphere
{
    internal const double Lapse = 2.25577e-5;
    internal const double Power = 5.25588;

    public static Pressure At(Altitude altitude) =>
        Pressure.FromAtmospheres(Math.Pow(1 - (Lapse * altitude.InMetres), Power));

    /// <summary>The height at which the air has this pressure.</summary>
    public static Altitude HeightOf(Pressure air) =>
        Altitude.FromMetres((1 - Math.Pow(air.InAtmospheres, 1 / Power)) / Lapse);
}
