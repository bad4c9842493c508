using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>Figures beyond which a pen or a unit has slipped, for sums that compute with anything.</summary>
public static class WaterExtremes
{
    /// <summary>In °dH or °dKH; sea water has about 350 °dH of general hardness (from memory).</summary>
    public const double MostDegrees = 400;

    /// <summary>No bag of fishes is closed for longer than a week: common practice, no source.</summary>
    public static readonly Elapsed LongestUnderWay = Elapsed.FromHours(168);

    /// <summary>The most of a dimension in its canonical unit; nothing where no figure is too large.</summary>
    public static double? MostOf(Dimension dimension) =>
        dimension == DimensionCatalogue.GeneralHardness ? GeneralHardness.FromGermanDegrees(MostDegrees).Canonical
        : dimension == DimensionCatalogue.CarbonateHardness ? CarbonateHardness.FromGermanDegrees(MostDegrees).Canonical
        : dimension == DimensionCatalogue.Elapsed ? LongestUnderWay.Canonical
        : null;
}
