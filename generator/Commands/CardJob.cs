using CareSheets.Pages;
using CareSheets.Pages.Cards;
using CareSheets.Paper;
using CareSheets.Paper.Layout;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Commands;

/// <summary>A card to print: of which species, how large, in which units, for which arrival.</summary>
internal sealed record CardJob(Entry Entry, PaperSize Size, string? Units, string? Arrival, CardOffer? Offer)
{
    /// <summary>Units on record, where not both.</summary>
    public static string? UnitsOf(string option) => option == "both" ? null : option;

    public CardPlan Plan(Site site) => new CardPageMaker(site with { Units = System }).Plan(Entry, Size, Offer);

    public PrintedCard OnRecord(CardPlan plan, DateOnly day) =>
        new(Entry.Name, Size, Units, Arrival, plan.Mark, day);

    private UnitSystem System => Units switch
    {
        "metric" => UnitSystem.Metric,
        "us" => UnitSystem.US,
        _ => UnitSystem.Both,
    };
}

/// <summary>A card with every line at its place, and when it was out of date, what was printed.</summary>
internal sealed record ChosenCard(CardJob Job, CardPlan Plan, PrintedCard? Before);
