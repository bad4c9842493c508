using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Collection;

/// <summary>
/// What an entry's silence on salt means. Salinity is stated where a fish needs or bears salt, so silence means
/// fresh water; but not of a relative of fishes that need salt, for there somebody may have forgotten it.
/// </summary>
public static class FreshWater
{
    /// <summary>Water with no more salt than this is fresh, in g/L (common practice, no source).</summary>
    public const double UpTo = 0.5;

    /// <summary>Its lowest keep salinity is above that of fresh water.</summary>
    public static bool NeedsSalt(Entry entry) => Salinity(entry)?.Of(RangeKind.Keep)?.Range.Value.Low > UpTo;

    /// <summary>Its entry speaks of salt, and not only to say that it lives in fresh water.</summary>
    public static bool BearsSalt(Entry entry) =>
        Salinity(entry) is { } salinity && !(salinity.Of(RangeKind.Keep)?.Range.Value.High <= UpTo);

    /// <summary>Whether the entry is silent on salt, and that can mean nothing but fresh water.</summary>
    public static bool GoesWithoutSaying(Entry entry, SpeciesCollection collection) =>
        Salinity(entry) is null && NeedyRelative(collection, entry.Genus, entry.Family.Value) is null;

    /// <summary>A species of the genus, or else of the family, that needs salt.</summary>
    public static Entry? NeedyRelative(SpeciesCollection collection, string genus, string family) =>
        collection.NeedingSalt.FirstOrDefault(e => e.Genus == genus) ??
        collection.NeedingSalt.FirstOrDefault(e => e.Family.Value == family);

    private static CareRange? Salinity(Entry entry) =>
        entry.Ranges.FirstOrDefault(r => r.Declaration.Dimension == DimensionCatalogue.Salinity);
}
