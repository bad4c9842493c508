using CareSheets.Arrivals;

namespace CareSheets.Pages.Stock;

/// <summary>Makes the page of new arrivals for customers.</summary>
internal sealed class NewArrivalsPageMaker(Site site)
{
    private readonly BatchFacts _facts = new(site);
    private readonly StockPicker _stock = new(site);

    private Words Words => site.Words;

    public NewArrivalsPage Make()
    {
        const string address = Routes.NewArrivals;
        var (here, coming) = (_stock.Here().ToList(), _stock.Coming().ToList());
        return new NewArrivalsPage(
            address, site.Frames.Make(address, Words["menu.arrivals"], Words["stock.description"]),
            Words["menu.arrivals"], Words["stock.lead"],
            [.. here.Select(a => Group(a, a.Arrival.Name, "stock.heading"))],
            [.. coming.Select(a => Group(a, $"coming-{a.Arrival.Name}", "stock.coming"))])
        {
            FeedHref = Routes.Between(address, Routes.ArrivalFeed),
            Nothing = here.Count == 0 ? Words["stock.nothing"] : "",
        };
    }

    /// <summary>An arrival that is half unpacked stands in both lists, so each has ids of its own.</summary>
    private ArrivalGroup Group(
        (Arrival Arrival, IReadOnlyList<Batch> Batches) told, string id, string heading) => new(
        id, Words.Say(heading, ("day", DateText.Of(told.Arrival.Date.Value, Words))),
        [.. told.Batches.Select(b => Line(new Delivery(told.Arrival, b)))]);

    private BatchLine Line(Delivery delivery)
    {
        var (entry, batch) = (_stock.EntryOf(delivery.Batch)!, delivery.Batch);
        return new BatchLine(
            entry.VernacularName,
            new Link(entry.ScientificName.Value.ToString(),
                Routes.Between(Routes.NewArrivals, Routes.Species(entry)), IsLatin: true),
            _facts.Kind(batch), _facts.Source(batch), _facts.Count(batch), _facts.Release(delivery),
            _facts.Price(batch));
    }
}
