using CareSheets.Collection;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Housing;

/// <summary>Holds a species against every water of the shop: its systems, then its tap.</summary>
public static class SystemFinder
{
    public static IReadOnlyList<SystemFit> Find(Entry entry, SpeciesCollection collection) =>
        [.. WaterSource.Of(collection.Store).Select(water => Hold(entry, water, collection))];

    private static SystemFit Hold(Entry entry, WaterSource water, SpeciesCollection collection) => new(
        water,
        [.. collection.Ranges.Select(r => FigureInWater.Compare(r, entry, water)).OfType<FigureInWater>()],
        Oxygen(entry, water, collection));

    /// <summary>At the warm end, where there is least of it; a tap is warmed first, so nothing is said of it.</summary>
    private static OxygenInWater? Oxygen(Entry entry, WaterSource water, SpeciesCollection collection)
    {
        var field = collection.Ranges.FirstOrDefault(r => r.Dimension == DimensionCatalogue.Temperature)?.Field ?? "";
        return water.Kind == WaterSourceKind.System && water.Water.Figures.GetValueOrDefault(field)?.High is { } warmth
            ? OxygenInWater.At(entry, warmth, collection.Store)
            : null;
    }
}
