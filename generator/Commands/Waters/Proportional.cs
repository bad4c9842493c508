using CareSheets.Quantities;

namespace CareSheets.Commands.Waters;

/// <summary>Figures of waters that mix in proportion, as blends and water changes take them.</summary>
internal static class Proportional
{
    /// <summary>In the order in which figures are tried; milligrams of anything come last.</summary>
    private static readonly Dimension[] Tried =
    [
        DimensionCatalogue.GeneralHardness, DimensionCatalogue.CarbonateHardness, DimensionCatalogue.Conductivity,
        DimensionCatalogue.Concentration, DimensionCatalogue.Salinity, DimensionCatalogue.Temperature,
        DimensionCatalogue.Acidity,
    ];

    /// <summary>
    /// What all figures measure, or nothing. Carbonate hardness may be written in °dH, but beside a °dKH that
    /// would mix two things, so there °dH is general hardness.
    /// </summary>
    public static Dimension? Common(IReadOnlyList<string> typed)
    {
        var common = WaterDesk.Common(typed, Tried);
        return common == DimensionCatalogue.CarbonateHardness && typed.Any(IsInDegrees)
            ? DimensionCatalogue.GeneralHardness
            : common;
    }

    private static bool IsInDegrees(string typed) =>
        QuantityText.Parse(typed, DimensionCatalogue.GeneralHardness) is { Ok: true, Value.Unit.Key: "germanDegree" };
}
