using System.Globalization;
using CareSheets.Collection;
using CareSheets.Pages.Stock;
using CareSheets.Pages.Waters;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>
/// Makes the pages that every site has once, home, all species, words, about and papers, and those
/// of former names.
/// </summary>
internal sealed class StandingPageMaker(Site site)
{
    public IEnumerable<IPage> Make()
    {
        yield return new HomePageMaker(site).Make();
        yield return AllSpecies();
        yield return Glossary();
        yield return About();
        yield return Papers();
        yield return new RecordPageMaker(site).Make();
        yield return new FlaggedPageMaker(site).Make();
        yield return new EvidencePageMaker(site).Make();
        yield return new WaterPageMaker(site).Make();
        yield return new WherePageMaker(site).Make();
        foreach (var (slug, former) in site.Collection.FormerNames)
            yield return Moved(slug, former);
    }

    private SpeciesListPage AllSpecies()
    {
        var title = site.Words["menu.species"];
        var count = site.Words.Count("fact.species", site.Collection.Entries.Count);
        return new SpeciesListPage(
            Routes.AllSpecies, site.Frames.Make(Routes.AllSpecies, title, $"{title}: {count}"), count,
            new SpeciesRows(site, Routes.AllSpecies).Rows(site.Collection.Entries));
    }

    private GlossaryPage Glossary()
    {
        var terms = site.Collection.Glossary.ToDictionary(t => t.Key.Value, t => t.Term);
        GlossaryLine Line(GlossaryTerm term) => new(
            term.Key.Value, term.Term, term.Meaning,
            [.. term.See.Where(s => terms.ContainsKey(s.Value)).Select(s => new Link(terms[s.Value], "#" + s.Value))]);
        return new GlossaryPage(
            Routes.Glossary,
            site.Frames.Make(Routes.Glossary, site.Words["menu.words"], site.Words["sentence.words_description"]),
            [.. site.Collection.Glossary.Select(Line)]);
    }

    private AboutPage About()
    {
        var words = site.Words;
        return new AboutPage(
            Routes.About,
            site.Frames.Make(Routes.About, words["menu.about"], words["sentence.about_description"]),
            site.Collection.Store.About ?? "",
            Counts(),
            Explained<EvidenceKind>("evidence"),
            Explained<RangeKind>("kind"))
        {
            Record = new Link(words["record.title"], Routes.HowWell),
        };
    }

    private IReadOnlyList<Fact> Explained<T>(string group)
        where T : struct, Enum =>
        [.. Enum.GetNames<T>().Select(k => new Fact(site.Words[$"{group}.{k}"], site.Words[$"about_{group}.{k}"]))];

    private IReadOnlyList<Fact> Counts()
    {
        var collection = site.Collection;
        Fact Of(string key, int count) => new(site.Words[key], count.ToString(CultureInfo.InvariantCulture));
        return
        [
            Of("fact.species_count", collection.Entries.Count), Of("fact.genera_count", collection.Genera.Count),
            Of("fact.families_count", collection.Families.Count),
            Of("fact.countries_count", collection.Countries.Count),
        ];
    }

    private PapersPage Papers()
    {
        const string address = Routes.Papers;
        var title = site.Words["sentence.papers_title"];
        return new PapersPage(
            address, site.Frames.Make(address, title, title, isListed: false),
            [.. site.Collection.Entries.Select(e => new PaperLine(
                e.ScientificName.Value.ToString(), e.VernacularName,
                Routes.Between(address, Routes.HomeSheet(e)), Routes.Between(address, Routes.TankCard(e))))])
        {
            Flagged = new Link(site.Words["flagged.title"], Routes.Between(address, Routes.Flagged)),
            Evidence = new Link(site.Words["lacking.title"], Routes.Between(address, Routes.Evidence)),
            Arrivals = new StockPageSet(site).Papers(address),
            Where = new Link(site.Words["housing.title"], Routes.Between(address, Routes.Where)),
        };
    }

    private MovedPage Moved(string slug, FormerName former)
    {
        var address = Routes.Species(slug);
        var entry = former.Entry;
        var title = former.Name.ToString();
        return new MovedPage(
            address, site.Frames.Make(address, title, title, isListed: false), title,
            entry.ScientificName.Value.ToString(), entry.VernacularName,
            Routes.Between(address, Routes.Species(entry)));
    }
}
