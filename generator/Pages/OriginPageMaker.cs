using CareSheets.Collection;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>Makes the pages of countries and waters, and the list of them.</summary>
internal sealed class OriginPageMaker(Site site)
{
    public IEnumerable<IPage> Make()
    {
        yield return Index();
        foreach (var (code, entries) in site.Collection.Countries)
            yield return Page(Routes.Country(code), "fact.country", CountryName.Of(code, site.Words), entries);
        foreach (var (water, entries) in site.Collection.Waters)
            yield return Page(Routes.Water(water), "fact.water", water, entries);
    }

    private OriginsPage Index()
    {
        const string address = Routes.Origins;
        CountedLink Counted(string name, string to, IReadOnlyList<Entry> entries) =>
            new(name, Routes.Between(address, to), site.Words.Count("fact.species", entries.Count), false);

        return new OriginsPage(
            address,
            site.Frames.Make(address, site.Words["menu.origins"], site.Words["sentence.origins_description"]),
            [.. site.Collection.Countries
                .GroupBy(c => RegionCatalogue.Of(c.Key) is [.., var smallest] ? smallest : "")
                .OrderBy(g => string.Join(';', RegionCatalogue.Of(g.First().Key)), StringComparer.Ordinal)
                .Select(g => new OriginRegion(RegionName.Of(g.Key, site.Words),
                    [.. g.Select(c => Counted(CountryName.Of(c.Key, site.Words), Routes.Country(c.Key), c.Value))
                        .OrderBy(c => c.Text, StringComparer.Ordinal)]))],
            [.. site.Collection.Waters.Select(w => Counted(w.Key, Routes.Water(w.Key), w.Value))]);
    }

    private OriginPage Page(string address, string kind, string name, IReadOnlyList<Entry> entries)
    {
        var count = site.Words.Count("fact.species", entries.Count);
        return new OriginPage(
            address, site.Frames.Make(address, name, $"{name}: {count}"),
            site.Words[kind], name, count, new SpeciesRows(site, address).Rows(entries));
    }
}
