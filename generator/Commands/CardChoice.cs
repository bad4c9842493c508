using CareSheets.Arrivals;
using CareSheets.Diagnostics;
using CareSheets.Pages;
using CareSheets.Pages.Cards;
using CareSheets.Paper;
using CareSheets.Reading;
using CareSheets.Species;

namespace CareSheets.Commands;

/// <summary>Which cards a call asks for.</summary>
internal sealed class CardChoice(Site site, CardsSettings settings, DiagnosticBag bag)
{
    private readonly IReadOnlyList<Entry> _entries = settings.Names.Length == 0
        ? site.Collection.Entries
        : [.. settings.Names.Select(n => site.Collection.Find(EntryNames.Slug(n))!).Distinct()];

    public IReadOnlyList<ChosenCard> Make(CardForm form, PrintedRecord record)
    {
        var chosen = settings.Stale ? Stale(record) : All(form);
        foreach (var card in chosen.Where(c => !c.Plan.HasWholeNames))
            bag.Add(CardCodes.CutName, card.Job.Entry.Span,
                ("entry", card.Job.Entry.Name), ("size", PaperSizeText.Of(card.Job.Size)));
        return chosen;
    }

    private List<ChosenCard> All(CardForm form) =>
    [
        .. Offers().AsParallel().AsOrdered().Select(one =>
        {
            var units = CardJob.UnitsOf(settings.Units);
            var job = new CardJob(one.Entry, form.Size, units, settings.Arrival, one.Offer);
            return new ChosenCard(job, job.Plan(site), null);
        }),
    ];

    /// <summary>Each batch of an arrival has a card of its own, for it has a price of its own.</summary>
    private IEnumerable<(Entry Entry, CardOffer? Offer)> Offers() => settings.Arrival is null
        ? _entries.Select(entry => (entry, (CardOffer?)null))
        : from delivery in Deliveries(settings.Arrival)
          let entry = _entries.FirstOrDefault(e => e.Name == delivery.Batch.Entry?.Value)
          where entry is not null
          select (entry, (CardOffer?)CardOffer.Of(delivery, site));

    /// <summary>Those not gone from the shop, whether unpacked or still to come.</summary>
    private IEnumerable<Delivery> Deliveries(string arrival) =>
        site.Collection.Arrivals.Arrivals.Where(a => a.Name == arrival)
            .SelectMany(a => a.Batches.Where(b => b.Left != 0).Select(b => new Delivery(a, b)));

    private List<ChosenCard> Stale(PrintedRecord record)
    {
        var chosen = new List<ChosenCard>();
        foreach (var (printed, span) in record.Cards)
        {
            if (site.Collection.Entries.FirstOrDefault(e => e.Name == printed.Entry) is not { } entry)
            {
                bag.Add(CardCodes.PrintedOfNothing, span, ("entry", printed.Entry));
                continue;
            }
            if (_entries.Contains(entry) && Changed(printed, entry) is { } changed)
                chosen.Add(changed);
        }
        return chosen;
    }

    /// <summary>
    /// Nothing while the card is true. Of several batches of one species in an arrival any may be the one.
    /// </summary>
    private ChosenCard? Changed(PrintedCard printed, Entry entry)
    {
        List<CardOffer?> offers = printed.Arrival is null ? []
            :
            [
                .. Deliveries(printed.Arrival).Where(d => d.Batch.Entry?.Value == entry.Name)
                    .Select(d => CardOffer.Of(d, site)),
            ];
        var jobs = offers.DefaultIfEmpty()
            .Select(offer => new CardJob(entry, printed.Size, printed.Units, printed.Arrival, offer));
        var cards = jobs.Select(job => new ChosenCard(job, job.Plan(site), printed)).ToList();
        return cards.Exists(c => c.Plan.Mark == printed.Mark) ? null : cards[0];
    }
}
