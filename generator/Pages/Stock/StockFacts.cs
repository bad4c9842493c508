using CareSheets.Species;

namespace CareSheets.Pages.Stock;

/// <summary>The answer to "Have you got it?" on the page of a species: a line for each batch.</summary>
internal sealed class StockFacts(Site site)
{
    private readonly BatchFacts _facts = new(site);

    public IReadOnlyList<Fact> Make(Entry entry) =>
    [
        .. site.Collection.Arrivals.InShop(entry.Name).Select(d => new Fact(
            site.Words.Say("stock.since", ("day", DateText.Of(d.Arrival.Date.Value, site.Words))),
            _facts.Sentence(d), _facts.Release(d))),
    ];
}
