using CareSheets.Collection;
using CareSheets.Names;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>
/// What pages find species by, in the order of the list of all: their names, apart from these their family and where
/// they come from, and the words that name their kind.
/// </summary>
public static class FindData
{
    public static DataFile Make(Site site) => new(Routes.SpeciesNames, "caresheetsSpecies", new
    {
        files = site.Collection.Entries.Select(e => e.Name),
        names = site.Collection.Entries.Select(Names),
        beyond = site.Collection.Entries.Select(e => Beyond(e, site)),
        kinds = site.Collection.Entries.Select(Kinds),
        words = site.Words.Group("find").ToDictionary(w => w.Name, w => w.Text),
    });

    /// <summary>What customers, the trade and books call it, the page's own name first.</summary>
    internal static IEnumerable<string> Names(Entry entry) =>
        entry.VernacularNames.Select(n => n.Value)
            .Append(entry.ScientificName.Value.ToString())
            .Concat(entry.FormerNames.Select(n => n.Value.ToString()))
            .Concat(entry.TradeCodes.SelectMany(c => TradeCode.Spellings(c.Value)));

    /// <summary>
    /// The last word of its name, such as pleco, and each genus it was put in. Other names of the trade don't count:
    /// they make a shark of a barb.
    /// </summary>
    private static IEnumerable<string> Kinds(Entry entry) =>
        new[] { entry.VernacularName.Split(' ', '-')[^1] }
            .Append(entry.ScientificName.Value.Genus)
            .Concat(entry.FormerNames.Select(n => n.Value.Genus))
            .Distinct();

    /// <summary>Its order, its family, its countries with the regions they lie in, and its waters.</summary>
    internal static IEnumerable<string> Beyond(Entry entry, Site site)
    {
        var countries = entry.Origin.CountryCodes.Select(c => c.Value).ToList();
        var regions = countries.SelectMany(RegionCatalogue.Of).Distinct();
        return new[] { entry.Order.Value, entry.Family.Value }
            .Concat(new FamilyNames(site).NoteOf(entry.Family.Value)?.VernacularNames.Select(n => n.Value) ?? [])
            .Concat(countries.Select(c => CountryName.Of(c, site.Words)))
            .Concat(regions.Select(r => RegionName.Of(r, site.Words)))
            .Concat(entry.Origin.WaterBodies.Select(w => w.Value));
    }
}
