using CareSheets.Arrivals;
using CareSheets.Species;
using CareSheets.Telling;

namespace CareSheets.Pages.Stock;

/// <summary>Makes the notes for whoever presents an arrival.</summary>
internal sealed class TalkingNotesMaker(Site site)
{
    /// <summary>As many as a listener keeps.</summary>
    private const int TellingsEach = 3;
    private const int WarningsEach = 3;

    private readonly DistinctionFinder _finder = new(site.Collection);
    private readonly DistinctionText _text = new(site);
    private readonly BatchFacts _batches = new(site);
    private readonly LawAlarm _law = new(site);
    private readonly StaffCautions _cautions = new(site);
    private readonly StockPicker _stock = new(site);

    private Words Words => site.Words;

    public TalkingNotes Make(Arrival arrival)
    {
        var address = Routes.TalkingNotes(arrival.Name);
        var title = Words.Say("notes.title", ("day", DateText.Of(arrival.Date.Value, Words)));
        return new TalkingNotes(
            address, site.Frames.Make(address, Words.Say("docket.tab", ("title", title), ("name", arrival.Name)),
                title, isListed: false),
            site.Collection.Store.Paper.ToLowerInvariant(), title, Words["notes.lead"], [.. Species(arrival)],
            Routes.Between(address, Routes.Papers));
    }

    /// <summary>
    /// What stands apart most comes first, by the sum of what is told of it: that opens the talk, and the
    /// last needs the least time.
    /// </summary>
    private IEnumerable<TalkedSpecies> Species(Arrival arrival)
    {
        var present = arrival.Batches.Where(b => b.Gone is null && _stock.EntryOf(b) is not null)
            .GroupBy(b => _stock.EntryOf(b)!).ToList();
        List<Entry> entries = [.. present.Select(p => p.Key)];
        return present
            .Select(p => (p.Key, Batches: p, Found: _finder.Find(p.Key, entries, TellingsEach)))
            .OrderByDescending(p => p.Found.Sum(d => d.Surprise)).ThenBy(p => p.Key.Name, StringComparer.Ordinal)
            .Select((p, i) => Species(arrival, p.Key, p.Batches, p.Found, i + 1));
    }

    private TalkedSpecies Species(
        Arrival arrival, Entry entry, IEnumerable<Batch> batches, IReadOnlyList<Distinction> found, int place) => new(
        DocketMaker.Number(place), entry.VernacularName, entry.ScientificName.Value.ToString(),
        new SayText(Words).Of(entry.Respelling),
        string.Join(" ", batches.Select(b => Stock(new Delivery(arrival, b)))),
        found.Count == 0
            ? [new Telling(Words["notes.nothing"], "")]
            : [.. found.Select(d => _text.Of(entry, d))],
        [.. Warnings(entry).Select(w => new LatinText(w))]);

    /// <summary>What the law says of it, then its gravest cautions.</summary>
    private IEnumerable<string> Warnings(Entry entry)
    {
        if (_law.Of(entry) is { } law)
            yield return law;
        foreach (var caution in _cautions.Of(entry).Take(WarningsEach))
            yield return caution;
    }

    private string Stock(Delivery delivery) => Words.Say("notes.stock",
        ("batch", _batches.Sentence(delivery)), ("release", _batches.Release(delivery)));
}
