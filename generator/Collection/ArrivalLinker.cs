using System.Globalization;
using CareSheets.Arrivals;
using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Collection;

/// <summary>
/// Holds arrivals against the entries and the shop, and against themselves: names that lead nowhere,
/// numbers and days that contradict one another, losses, and what a new batch does to its system.
/// </summary>
public sealed class ArrivalLinker(KnownNames known, IReadOnlyList<Entry> entries, Store store, DiagnosticBag bag)
{
    private const double MostTotalToStandard = 1.6; // tails without long filaments: common practice, no source

    private readonly Dictionary<string, Entry> _entries =
        entries.DistinctBy(e => e.Name).ToDictionary(e => e.Name);

    private readonly HashSet<string> _systems = [.. store.Systems.Select(s => s.Name)];

    public void Check(IReadOnlyList<Arrival> arrivals)
    {
        var calendar = new ReleaseCalendar(arrivals, store.Observation);
        foreach (var arrival in arrivals)
        {
            CheckOrder(arrival);
            foreach (var measured in arrival.Bags)
                CheckSystem(measured.System);
            foreach (var batch in arrival.Batches)
                Check(arrival, batch);
            CheckJoining(arrival, calendar);
        }
    }

    private void Check(Arrival arrival, Batch batch)
    {
        CheckEntry(batch);
        foreach (var name in batch.Perhaps.Where(p => !known.Entries.Contains(p.Value)))
            NoSuchEntry(name);
        if (batch.System is { } system)
            CheckSystem(system);
        CheckNumbers(batch);
        CheckSize(batch);
        foreach (var loss in batch.Losses)
            CheckOrder("the arrival", arrival.Date, "a loss", loss.Date);
        if (batch.Gone is { } gone)
            CheckOrder("the arrival", arrival.Date, "gone", gone);
        CheckLosses(arrival, batch);
    }

    private void CheckEntry(Batch batch)
    {
        if (batch.Entry is not { } name)
            bag.Add(ArrivalCodes.Unnamed, batch.Said.Span, ("suggestion", batch.Perhaps.Count == 0
                ? "It stands on the docket; name its entry when you know."
                : $"Perhaps {string.Join(", or ", batch.Perhaps.Select(p => p.Value))}: name it under entry."));
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

    private void CheckNumbers(Batch batch)
    {
        if (batch.Alive is not { } alive)
            return;
        if (alive.Value > batch.Count?.Value)
            bag.Add(ArrivalCodes.MoreAlive, alive.Span,
                ("alive", Text(alive.Value)), ("count", Text(batch.Count.Value)));
        var lost = batch.Losses.Sum(l => (long)l.Count.Value);
        if (lost > alive.Value)
            bag.Add(ArrivalCodes.MoreLost, alive.Span, ("lost", Text(lost)), ("alive", Text(alive.Value)));
    }

    private void CheckSize(Batch batch)
    {
        if (batch.Size is not { Low: { } sold } size || batch.Entry is not { } name ||
            _entries.GetValueOrDefault(name.Value) is not { } entry ||
            entry.Adult.Length.Value is not { High: { } grown } adult)
            return;
        if (sold > grown * (size.Basis == adult.Basis ? 1 : MostTotalToStandard))
            bag.Add(ArrivalCodes.SizeBeyondAdult, batch.Said.Span,
                ("size", size.Text), ("name", entry.ScientificName.Value.ToString()), ("adult", adult.Text));
    }

    private void CheckLosses(Arrival arrival, Batch batch)
    {
        if (batch.Note is null && LossCount.From(arrival, batch) is { IsAlarming: true } losses)
            bag.Add(ArrivalCodes.ManyLost, batch.Said.Span,
                ("lost", Text(losses.Lost)), ("count", Text(losses.Of)), ("days", Text(LossCount.Days)),
                ("share", Percent(losses.Share)), ("limit", Percent(LossCount.AlarmFrom)));
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
                    ("system", joining.System), ("old", Text(joining.Old)), ("new", Text(joining.New)));
        }
    }

    private void CheckOrder(Arrival arrival)
    {
        if (arrival is { Packed: { } packed, Opened: { } opened } && opened.Value < packed.Value)
            Swapped("opened", opened.Value, opened.Span, "packed", packed.Value);
        if (arrival.Packed is { } closed && DateOnly.FromDateTime(closed.Value) > arrival.Date.Value)
            CheckOrder("packed", closed.With(DateOnly.FromDateTime(closed.Value)), "the arrival", arrival.Date);
    }

    private void CheckOrder(string earlier, Sourced<DateOnly> first, string later, Sourced<DateOnly> second)
    {
        if (second.Value < first.Value)
            bag.Add(ArrivalCodes.WrongOrder, second.Span, ("later", later), ("laterDay", Text(second.Value)),
                ("earlier", earlier), ("earlierDay", Text(first.Value)));
    }

    private void Swapped(string later, DateTime second, SourceSpan span, string earlier, DateTime first) =>
        bag.Add(ArrivalCodes.WrongOrder, span, ("later", later), ("laterDay", Text(second)),
            ("earlier", earlier), ("earlierDay", Text(first)));

    private static string Text(DateTime moment) => moment.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Percent(double share) => (share * 100).ToString("0.#", CultureInfo.InvariantCulture);
}
