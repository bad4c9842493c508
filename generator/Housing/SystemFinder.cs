using CareSheets.Collection;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Housing;

/// <summary>Holds a species against every water of the shop: its systems, then its tap.</summary>
public static class SystemFinder
{
    /// <param name="entry">Who is to live there.</param>
    /// <param name="collection">The shop with its waters.</param>
    /// <param name="ask">Asked of ranges that the entry does not state.</param>
    public static IReadOnlyList<SystemFit> Find(Entry entry, SpeciesCollection collection, AskRelatives ask) =>
        [.. WaterSource.Of(collection.Store).Select(water => Hold(entry, water, collection, ask))];

    private static SystemFit Hold(
        Entry entry, WaterSource water, SpeciesCollection collection, AskRelatives ask) => new(
        water,
        [
            .. collection.Ranges.Select(r => FigureInWater.Compare(r, entry, water, collection, ask))
                .OfType<FigureInWater>(),
        ],
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
