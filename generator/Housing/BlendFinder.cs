using CareSheets.Collection;
using CareSheets.Species;

namespace CareSheets.Housing;

/// <summary>
/// Looks for two waters of the shop, pure water among them, a blend of which a species can live in. Tap and
/// pure water come first, for they never run out.
/// </summary>
public static class BlendFinder
{
    /// <summary>Such blends, the handiest first; none where the entry does not say what it needs.</summary>
    public static IEnumerable<BlendOffer> Find(Entry entry, SpeciesCollection collection)
    {
        var waters = WaterSource.Of(collection.Store).OrderByDescending(w => w.Kind).ToList();
        foreach (var (one, other) in Pairs(waters))
        {
            var pair = new BlendPair(one, other, entry, collection.Ranges);
            if (pair.Offer() is { } offer)
                yield return offer;
        }
    }

    private static IEnumerable<(WaterSource One, WaterSource Other)> Pairs(List<WaterSource> waters)
    {
        foreach (var water in waters)
            yield return (water, WaterSource.Pure);
        for (var i = 0; i < waters.Count; i++)
        {
            foreach (var other in waters.Skip(i + 1))
                yield return (waters[i], other);
        }
    }
}
