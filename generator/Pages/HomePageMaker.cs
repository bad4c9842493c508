using CareSheets.Arrivals;
using CareSheets.Pages.Stock;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>Makes the first page of the site.</summary>
internal sealed class HomePageMaker(Site site)
{
    private const int MostLatest = 6;
    private const int MostArrivals = 2;
    private const int MostBatches = 6;
    private const string Address = Routes.Home;

    private readonly BatchFacts _facts = new(site);
    private readonly StockPicker _stock = new(site);

    private Words Words => site.Words;

    public HomePage Make()
    {
        var (store, entries) = (site.Collection.Store, site.Collection.Entries);
        var species = Words.Count("fact.species", entries.Count);
        var lead = Words.Say("sentence.home_lead", ("species", species));
        var arrivals = Arrivals();
        return new HomePage(
            Address, site.Frames.Make(Address, store.Name, lead) with { HasForm = true },
            store.Name, lead, store.About ?? "",
            new FamilyNames(site).Counted(site.Collection.Families, Address),
            new SpeciesRows(site, Address).Rows(Latest(entries)))
        {
            Search = new Link(Words.Say("home.browse", ("species", species)), Routes.AllSpecies),
            Arrivals = arrivals,
            Nothing = arrivals.Count == 0 ? Words["stock.nothing"] : "",
            AllArrivals = new Link(Words["home.all_arrivals"], Routes.NewArrivals),
            Questions = Questions(),
            AboutPage = new Link(Words["menu.about"], Routes.About),
        };
    }

    /// <summary>
    /// Whole days of reading, the last first, as long as there is room. Of a day that has more, nothing tells
    /// which entries to choose, so it ends the list, and the first page may have none.
    /// </summary>
    private static IReadOnlyList<Entry> Latest(IReadOnlyList<Entry> entries)
    {
        var latest = new List<Entry>();
        foreach (var day in entries.GroupBy(e => e.Reviewed).OrderByDescending(d => d.Key))
        {
            if (latest.Count + day.Count() > MostLatest)
                break;
            latest.AddRange(day.OrderBy(e => e.Name, StringComparer.Ordinal));
        }
        return latest;
    }

    private IReadOnlyList<HomeQuestion> Questions() =>
    [
        new(new Link(Words["home.fits"], Routes.FitsMyTank), Words["home.fits_told"]),
        new(new Link(Words["home.together"], Routes.Together), Words["home.together_told"]),
        new(new Link(Words["home.water"], Routes.WaterSums), Words["home.water_told"]),
    ];

    /// <summary>The newest in the shop, then the next that is expected; an older one where none is.</summary>
    private IReadOnlyList<HomeArrival> Arrivals()
    {
        var coming = _stock.Coming().Take(1).Select(a => Arrival(a, "stock.coming")).ToList();
        var here = _stock.Here().Take(MostArrivals - coming.Count).Select(a => Arrival(a, "stock.heading"));
        return [.. here, .. coming];
    }

    private HomeArrival Arrival((Arrival Arrival, IReadOnlyList<Batch> Batches) told, string heading)
    {
        var more = told.Batches.Count - MostBatches;
        return new HomeArrival(
            Words.Say(heading, ("day", DateText.Of(told.Arrival.Date.Value, Words))),
            [.. told.Batches.Take(MostBatches).Select(b => Day(new Delivery(told.Arrival, b)))],
            more > 0 ? Words.Count("home.more", more) : "");
    }

    private BatchDay Day(Delivery delivery)
    {
        var entry = _stock.EntryOf(delivery.Batch)!;
        var told = new[] { _facts.Release(delivery), _facts.Price(delivery.Batch) };
        return new BatchDay(
            new Link(entry.VernacularName, Routes.Species(entry)), entry.ScientificName.Value.ToString(),
            string.Join(Words["sentence.list_separator"], told.Where(t => t.Length > 0)));
    }
}
