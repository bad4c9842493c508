using System.Collections.Frozen;
using CareSheets.Quantities.Units;

namespace CareSheets.Quantities;

/// <summary>Every kind of quantity this shop writes; the schema names them by key.</summary>
public static class DimensionCatalogue
{
    public static readonly Dimension Temperature = TemperatureUnits.Place;
    public static readonly Dimension TemperatureDifference = TemperatureUnits.Difference;
    public static readonly Dimension Acidity = AcidityUnits.Place;
    public static readonly Dimension AcidityDifference = AcidityUnits.Difference;
    public static readonly Dimension GeneralHardness = HardnessUnits.General;
    public static readonly Dimension CarbonateHardness = HardnessUnits.Carbonate;
    public static readonly Dimension Length = LengthUnits.Extent;
    public static readonly Dimension Volume = VolumeUnits.Capacity;
    public static readonly Dimension Conductivity = SolutionUnits.Conductivity;
    public static readonly Dimension Salinity = SolutionUnits.Salinity;
    public static readonly Dimension Duration = DurationUnits.LifeSpan;
    public static readonly Dimension Concentration = SolutionUnits.Dissolved;
    public static readonly Dimension Ammonia = AmmoniaUnits.Content;
    public static readonly Dimension Pressure = AirUnits.Pressure;
    public static readonly Dimension Altitude = AirUnits.Height;
    public static readonly Dimension Elapsed = ElapsedUnits.Time;
    public static readonly Dimension Share = ShareUnits.OfAWhole;

    private static readonly FrozenDictionary<string, Dimension> ByKey =
        All.ToFrozenDictionary(dimension => dimension.Key);

    /// <summary>
    /// In the order in which a unit of the wrong kind is looked for: °F names a temperature
    /// before a difference, °dH general before carbonate hardness.
    /// </summary>
    public static IReadOnlyList<Dimension> All =>
    [
        Temperature, TemperatureDifference, Acidity, AcidityDifference, GeneralHardness,
        CarbonateHardness, Length, Volume, Conductivity, Salinity, Duration,
        Concentration, Ammonia, Pressure, Altitude, Elapsed, Share,
    ];

    /// <summary>What two values of a dimension differ by: of an amount, an amount of its own kind.</summary>
    public static Dimension DifferenceOf(Dimension dimension) =>
        dimension == Temperature ? TemperatureDifference :
        dimension == Acidity ? AcidityDifference : dimension;

    /// <summary>The dimension of that key, spelled exactly so.</summary>
    public static Dimension? Find(string key) => ByKey.GetValueOrDefault(key);
}
