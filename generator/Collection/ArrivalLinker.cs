using System.Globalization;
using CareSheets.Arrivals;
using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Collection;

/// <summary>
/// Holds arrivals against the entries and the shop: names that lead nowhere, and what a new batch does
/// to the system that it joins.
/// </summary>
public sealed class ArrivalLinker(KnownNames known, IReadOnlyList<Entry> entries, Store store, DiagnosticBag bag)
{
    private readonly HashSet<string> _systems = [.. store.Systems.Select(s => s.Name)];

    /// <summary>A former name leads on for ever, in the file of an old arrival too.</summary>
    private readonly Dictionary<string, string> _formerNames = entries
        .SelectMany(e => e.FormerNames.Select(n => (n.Value.Slug, e.Name)))
        .DistinctBy(n => n.Slug).ToDictionary(n => n.Slug, n => n.Name);

    /// <returns>The arrivals with today's names of their entries.</returns>
    public IReadOnlyList<Arrival> Link(IReadOnlyList<Arrival> read)
    {
        List<Arrival> arrivals =
            [.. read.Select(a => a with { Batches = [.. a.Batches.Select(b => b with { Entry = Today(b.Entry) })] })];
        var calendar = new ReleaseCalendar(arrivals, store.Observation);
        foreach (var arrival in arrivals)
        {
            foreach (var measured in arrival.Bags)
                Check(measured, arrival);
            foreach (var batch in arrival.Batches)
                Check(batch);
            CheckJoining(arrival, calendar);
        }
        new ArrivalCheck(entries, bag).Check(arrivals);
        return arrivals;
    }

    private Sourced<string>? Today(Sourced<string>? name) =>
        name is not null && !known.Entries.Contains(name.Value) && _formerNames.TryGetValue(name.Value, out var today)
            ? name.With(today)
            : name;

    private void Check(MeasuredBag measured, Arrival arrival)
    {
        if (measured.System is { } system)
            CheckSystem(system);
        if (measured.Tank is { } tank && !arrival.Batches.Any(b => b.Tank == tank.Value))
            bag.Add(ArrivalCodes.BagOfNoBatch, tank.Span, ("tank", tank.Value));
    }

    private void Check(Batch batch)
    {
        CheckEntry(batch);
        if (batch is { Unclear.Count: > 0, Gone: null })
            bag.Add(ArrivalCodes.LeftOpen, batch.Said.Span, ("unclear", string.Join("; ", batch.Unclear)));
        foreach (var name in batch.Perhaps.Where(p => !known.Entries.Contains(p.Value)))
            NoSuchEntry(name);
        if (batch.System is { } system)
            CheckSystem(system);
    }

    private void CheckEntry(Batch batch)
    {
        if (batch.Entry is not { } name)
            bag.Add(ArrivalCodes.Unnamed, batch.Said.Span, ("suggestion", batch.Perhaps.Count == 0
                ? "It stands on the docket; name its entry when you know."
                : $"Perhaps {string.Join(", or ", batch.Perhaps.Select(p => p.Value))}; " +
                  "name it under entry if it is."));
        else if (!known.Entries.Contains(name.Value))
            NoSuchEntry(name);
        else if (known.Drafts.Contains(name.Value))
            bag.Add(ArrivalCodes.DraftEntry, name.Span, ("name", name.Value));
    }

    private void NoSuchEntry(Sourced<string> name) => bag.Add(LinkCodes.NoSuchEntry, name.Span,
        ("name", name.Value), ("suggestion", CollectionLinker.Suggest(name.Value, known.Entries)));

    private void CheckSystem(Sourced<string> name)
    {
        if (!_systems.Contains(name.Value))
            bag.Add(ArrivalCodes.NoSuchSystem, name.Span,
                ("name", name.Value), ("suggestion", CollectionLinker.Suggest(name.Value, _systems)));
    }

    /// <summary>Told while the batch is not in the water yet: then it can still go elsewhere.</summary>
    private void CheckJoining(Arrival arrival, ReleaseCalendar calendar)
    {
        var coming = arrival.Batches.Where(b => b is { IsUnpacked: false, System: not null, Gone: null })
            .GroupBy(b => b.System!.Value);
        foreach (var group in coming)
        {
            var longest = group.MaxBy(calendar.DaysOf)!;
            if (calendar.Join(group.Key, arrival.Date.Value, calendar.DaysOf(longest)) is { } joining)
                bag.Add(ArrivalCodes.JoinsEarly, longest.System!.Span,
                    ("system", joining.System), ("old", Day(joining.Old)), ("new", Day(joining.New)));
        }
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
