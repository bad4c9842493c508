using CareSheets.Diagnostics;
using CareSheets.Pages;
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
        .. _entries.AsParallel().AsOrdered().Select(entry =>
        {
            var job = new CardJob(entry, form.Size, CardJob.UnitsOf(settings.Units), null, null);
            return new ChosenCard(job, job.Plan(site), null);
        }),
    ];

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
            var job = new CardJob(entry, printed.Size, printed.Units, printed.Arrival, null);
            var plan = job.Plan(site);
            if (_entries.Contains(entry) && plan.Mark != printed.Mark)
                chosen.Add(new ChosenCard(job, plan, printed));
        }
        return chosen;
    }
}
