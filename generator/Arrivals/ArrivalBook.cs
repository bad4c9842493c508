using CareSheets.Species;

namespace CareSheets.Arrivals;

/// <summary>All arrivals of the shop, and when their fish may be sold.</summary>
public sealed class ArrivalBook
{
    private readonly ILookup<string, Delivery> _byEntry;

    public ArrivalBook(IEnumerable<Arrival> arrivals, Observation usual)
    {
        Arrivals =
        [
            .. arrivals.OrderByDescending(a => a.Date.Value).ThenBy(a => a.Name, StringComparer.Ordinal),
        ];
        Calendar = new ReleaseCalendar(Arrivals, usual);
        _byEntry = Arrivals.SelectMany(a => a.Batches.Select(b => new Delivery(a, b)))
            .Where(d => d.Batch.Entry is not null)
            .ToLookup(d => d.Batch.Entry!.Value);
    }

    /// <summary>The newest first.</summary>
    public IReadOnlyList<Arrival> Arrivals { get; }

    public ReleaseCalendar Calendar { get; }

    /// <summary>What is in the shop of a species, the newest first.</summary>
    public IEnumerable<Delivery> InShop(string entry) => _byEntry[entry].Where(d => d.Batch.Left > 0);
}

/// <summary>A batch with the arrival that it came in.</summary>
public sealed record Delivery(Arrival Arrival, Batch Batch);
