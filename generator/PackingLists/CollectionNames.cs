using CareSheets.Collection;
using CareSheets.Names;
using CareSheets.Names.Matching;

namespace CareSheets.PackingLists;

/// <summary>The names of all entries, drafts among them, for matching.</summary>
public static class CollectionNames
{
    public static NameMatcher Matcher(SpeciesCollection collection) =>
        new(new NameIndex(Of(collection)), GenusTable.Known);

    private static IEnumerable<NamedSpecies> Of(SpeciesCollection collection) =>
        collection.Entries.Select(e => new NamedSpecies(
            e.Name, e.ScientificName.Value,
            [.. e.FormerNames.Select(n => n.Value).Append(e.OriginalName.Value)
                .Where(n => n != e.ScientificName.Value).Distinct()],
            [.. e.TradeCodes.Select(c => c.Value)],
            [.. e.VernacularNames.Select(v => v.Value)]))
            .Concat(Drafts(collection));

    /// <summary>Of a draft only the file's name is known here, which is that of the species.</summary>
    private static IEnumerable<NamedSpecies> Drafts(SpeciesCollection collection) =>
        from draft in collection.Known.Drafts
        let words = draft.Split('-', 2)
        where words.Length == 2 && words[0].Length > 1
        let genus = char.ToUpperInvariant(words[0][0]) + words[0][1..]
        let name = ScientificName.Parse($"{genus} {words[1].Replace('-', ' ')}")
        where name is not null
        select new NamedSpecies(draft, name, [], [], []);
}
