using CareSheets.Arrivals;
using CareSheets.Pages.Stock;

namespace CareSheets.Pages.Cards;

/// <summary>What an arrival adds to a card, ready to print; empty where it says nothing.</summary>
/// <param name="Price">For one fish, with its currency.</param>
/// <param name="Count">How many are in the tank.</param>
/// <param name="From">Where these very fish are from, which says more than the species' range.</param>
public sealed record CardOffer(string Price, string Count, string From)
{
    public static CardOffer Of(Batch batch, Site site)
    {
        var facts = new BatchFacts(site);
        return new CardOffer(facts.Price(batch), facts.Count(batch), facts.Source(batch));
    }
}
