using CareSheets.Arrivals;
using CareSheets.Species;

namespace CareSheets.Pages.Stock;

/// <summary>
/// Which batches customers are told of: those whose entry is published and that are not gone. What is
/// new is counted from the newest arrival, not from today, so that the same content makes the same site.
/// </summary>
internal sealed class StockPicker(Site site)
{
    /// <summary>How long an arrival stays new beside the newest one.</summary>
    private const int DaysNew = 42;

    private ArrivalBook Book => site.Collection.Arrivals;

    public Entry? EntryOf(Batch batch) =>
        batch.Entry is { } name ? site.Collection.Find(name.Value) : null;

    /// <summary>The newest first, each with its batches that are in the shop.</summary>
    public IEnumerable<(Arrival Arrival, IReadOnlyList<Batch> Batches)> Here() =>
        Told(b => b.Left > 0).Where(a => a.Arrival.Date.Value > Newest().AddDays(-DaysNew));

    /// <summary>The next first, each with its batches whose bags have not been opened.</summary>
    public IEnumerable<(Arrival Arrival, IReadOnlyList<Batch> Batches)> Coming() =>
        Told(b => b is { IsUnpacked: false, Gone: null }).Reverse();

    private DateOnly Newest() => Told(b => b.Left > 0).Select(a => a.Arrival.Date.Value)
        .DefaultIfEmpty(DateOnly.MinValue.AddDays(DaysNew)).Max();

    private IEnumerable<(Arrival Arrival, IReadOnlyList<Batch> Batches)> Told(Func<Batch, bool> isTold) =>
        from arrival in Book.Arrivals
        let batches = (IReadOnlyList<Batch>)[.. arrival.Batches.Where(b => isTold(b) && EntryOf(b) is not null)]
        where batches.Count > 0
        select (arrival, batches);
}
