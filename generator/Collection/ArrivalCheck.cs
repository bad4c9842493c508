using System.Globalization;
using CareSheets.Arrivals;
using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Species;

namespace CareSheets.Collection;

/// <summary>Holds the numbers and days of arrivals against one another, and sizes against grown fish.</summary>
internal sealed class ArrivalCheck(IReadOnlyList<Entry> entries, DiagnosticBag bag)
{
    private const double MostTotalToStandard = 1.6; // tails without long filaments: common practice, no source

    private readonly Dictionary<string, Entry> _entries =
        entries.DistinctBy(e => e.Name).ToDictionary(e => e.Name);

    public void Check(IReadOnlyList<Arrival> arrivals)
    {
        foreach (var arrival in arrivals)
        {
            CheckOrder(arrival);
            foreach (var batch in arrival.Batches)
            {
                CheckName(batch);
                CheckNumbers(batch);
                CheckSize(batch);
                CheckLosses(arrival, batch);
                CheckOrder(arrival, batch);
            }
        }
    }

    /// <summary>
    /// What was taken by its name has the epithet in its line, of whatever genus and gender; a slip of one line
    /// would give customers the card of another fish.
    /// </summary>
    private void CheckName(Batch batch)
    {
        if (batch is not { Entry: { } name, Taken: NameTaken.Exact or NameTaken.FormerName } ||
            _entries.GetValueOrDefault(name.Value) is not { } entry)
            return;
        var said = Slug.From(batch.Said.Value);
        if (!entry.FormerNames.Select(n => n.Value).Append(entry.ScientificName.Value)
            .Append(entry.OriginalName.Value).Any(n => said.Contains(Stem(n.Epithet), StringComparison.Ordinal)))
            bag.Add(ArrivalCodes.NotAsSaid, name.Span, ("name", entry.ScientificName.Value.ToString()));
    }

    /// <summary>An epithet without the ending of its gender.</summary>
    private static string Stem(string epithet) => epithet.Length > 5 ? epithet[..^2] : epithet;

    private void CheckNumbers(Batch batch)
    {
        if (batch.Alive is not { } alive)
            return;
        if (alive.Value > batch.Count?.Value)
            bag.Add(ArrivalCodes.MoreAlive, alive.Span,
                ("alive", Number(alive.Value)), ("count", Number(batch.Count.Value)));
        var lost = batch.Losses.Sum(l => (long)l.Count.Value);
        if (lost > alive.Value)
            bag.Add(ArrivalCodes.MoreLost, alive.Span, ("lost", Number(lost)), ("alive", Number(alive.Value)));
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
        if (batch.Cause is null && LossCount.From(arrival, batch) is { IsAlarming: true } losses)
            bag.Add(ArrivalCodes.ManyLost, batch.Said.Span,
                ("lost", Number(losses.Lost)), ("count", Number(losses.Of)), ("days", Number(LossCount.Days)),
                ("share", Percent(losses.Share)), ("limit", Percent(LossCount.AlarmFrom)));
    }

    private void CheckOrder(Arrival arrival, Batch batch)
    {
        foreach (var loss in batch.Losses)
            CheckOrder("the arrival", arrival.Date.Value, "a loss", loss.Date.Value, loss.Date.Span);
        if (batch.Gone is not { } gone)
            return;
        CheckOrder("the arrival", arrival.Date.Value, "gone", gone.Value, gone.Span);
        foreach (var loss in batch.Losses)
            CheckOrder("a loss", loss.Date.Value, "gone", gone.Value, gone.Span);
    }

    private void CheckOrder(Arrival arrival)
    {
        if (arrival is { Packed: { } packed, Opened: { } opened } && opened.Value < packed.Value)
            Tell("packed", Moment(packed.Value), "opened", Moment(opened.Value), opened.Span);
        if (arrival.Packed is { } closed)
            CheckOrder("packed", DateOnly.FromDateTime(closed.Value),
                "the arrival", arrival.Date.Value, arrival.Date.Span);
    }

    private void CheckOrder(string earlier, DateOnly first, string later, DateOnly second, SourceSpan span)
    {
        if (second < first)
            Tell(earlier, Day(first), later, Day(second), span);
    }

    private void Tell(string earlier, string first, string later, string second, SourceSpan span) =>
        bag.Add(ArrivalCodes.WrongOrder, span,
            ("later", later), ("laterDay", second), ("earlier", earlier), ("earlierDay", first));

    private static string Moment(DateTime moment) => moment.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Percent(double share) => (share * 100).ToString("0.#", CultureInfo.InvariantCulture);
}
