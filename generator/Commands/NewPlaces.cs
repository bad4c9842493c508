using CareSheets.Collection;
using CareSheets.Names;
using CareSheets.Relatives;

namespace CareSheets.Commands;

/// <summary>Where a species belongs that has no entry yet: by its genus, or else by its family.</summary>
internal static class NewPlaces
{
    /// <summary>The place, or in words why relatives here can't draft the species.</summary>
    public static (NewPlace? Place, string Problem) Of(
        SpeciesCollection collection, ScientificName name, string? familyName)
    {
        var genus = collection.Genera.FirstOrDefault(g => g.Name == name.Genus);
        var known = GenusTable.Known.Find(name.Genus)?.Family;
        if (familyName is null && genus is null && Left(collection, name.Genus) is { Length: > 0 } now)
            return (null, $"All species that were in {name.Genus} here have moved, to {now}: look up where this one " +
                $"is today. If it is still a {name.Genus}, name the family: --family {known ?? "NAME"}.");
        var asked = familyName ?? genus?.Parent ?? known;
        if (asked is null)
            return (null, $"No entry is of the genus {name.Genus}. Name its family: --family NAME." +
                DidYouMean(name.Genus, collection.Genera.Select(g => g.Name)));
        if (genus is not null && genus.Parent != asked)
            return (null, $"The genus {genus.Name} is in the family {genus.Parent} here, not in {asked}.");
        return collection.Families.FirstOrDefault(f => f.Name == asked) is { } family
            ? (new NewPlace(name.Genus, family.Name, family.Parent), "")
            : (null, $"No entry is of the family {asked}, so no relative here can draft {name}. Write its entry from " +
                "sources, after any in content/species." + DidYouMean(asked, collection.Families.Select(f => f.Name)));
    }

    /// <summary>Genera to which all species of a genus have moved; empty where some are still in it.</summary>
    private static string Left(SpeciesCollection collection, string genus) => string.Join(", ",
        collection.FormerGenera.Where(f => f.Former == genus).SelectMany(f => f.Now).Select(t => t.Name));

    private static string DidYouMean(string word, IEnumerable<string> known) =>
        EditDistance.Nearest(word, known) is { } nearest ? $" Did you mean {nearest}?" : "";
}
