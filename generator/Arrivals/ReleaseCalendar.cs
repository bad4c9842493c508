using CareSheets.Species;

namespace CareSheets.Arrivals;

/// <summary>
/// When the batches of all arrivals may be sold. Fish that share water are released together, when the
/// last of them to join has been watched long enough: release = max(arrival + days). So states the
/// Australian rule for consignments in one recirculating system (Department of Agriculture, Fisheries
/// and Forestry, industry advice notice 41-2025, seen in part); here it holds for any system of tanks.
/// </summary>
public sealed class ReleaseCalendar
{
    private readonly Observation _usual;
    private readonly ILookup<string, Watch> _bySystem;

    public ReleaseCalendar(IEnumerable<Arrival> arrivals, Observation usual)
    {
        _usual = usual;
        _bySystem = arrivals.SelectMany(a => a.Batches.Select(b => new Watch(a, b, OwnEnd(a, b))))
            .Where(w => w.Batch.System is not null)
            .ToLookup(w => w.Batch.System!.Value);
    }

    /// <summary>Days that the batch itself is watched.</summary>
    public int DaysOf(Batch batch) => batch.Days ?? _usual.Days;

    /// <summary>When the batch could be sold if it shared its water with nobody.</summary>
    public DateOnly OwnEnd(Arrival arrival, Batch batch) => arrival.Date.Value.AddDays(DaysOf(batch));

    /// <summary>When the batch may be sold: with the last of all that share its water.</summary>
    public Release ReleaseOf(Arrival arrival, Batch batch)
    {
        var own = OwnEnd(arrival, batch);
        if (batch.System is not { } system)
            return new Release(own, null);
        var last = Last(_bySystem[system.Value]);
        return last is null || last.End <= own ? new Release(own, null) : new Release(last.End, last);
    }

    /// <summary>When a system is released; nothing while no batch is in it.</summary>
    public Watch? LastOf(string system) => Last(_bySystem[system]);

    /// <summary>
    /// What it does to a system that something joins it on a day and is watched for so many days:
    /// nothing while none is there before it, or when their date stays as it is.
    /// </summary>
    public Joining? Join(string system, DateOnly day, int days)
    {
        var there = _bySystem[system]
            .Where(w => w.Arrival.Date.Value < day && !(w.Batch.Gone?.Value <= day));
        return Last(there) is { } last && day.AddDays(days) > last.End
            ? new Joining(system, last.End, day.AddDays(days))
            : null;
    }

    /// <summary>Of watches that end on one day the first told counts, so that two runs agree.</summary>
    private static Watch? Last(IEnumerable<Watch> watches) =>
        watches.Aggregate((Watch?)null, (last, next) => last is null || next.End > last.End ? next : last);
}
