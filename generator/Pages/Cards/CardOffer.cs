using CareSheets.Arrivals;
using CareSheets.Pages.Stock;

namespace CareSheets.Pages.Cards;

/// <summary>What an arrival adds to a card, ready to print; empty where it says nothing.</summary>
/// <param name="Price">For one fish, with its currency.</param>
/// <param name="Kind">Their strain and sex, and how many are in the tank.</param>
/// <param name="Release">The day from which they are sold.</param>
/// <param name="From">Where these very fish are from, which says more than the species' range.</param>
public sealed record CardOffer(string Price, string Kind, string Release, string From)
{
    public static CardOffer Of(Delivery delivery, Site site)
    {
        var (facts, batch) = (new BatchFacts(site), delivery.Batch);
        return new CardOffer(
            facts.Price(batch), facts.Counted(batch), facts.Release(delivery), facts.Source(batch));
    }
}
