using System.Globalization;
using CareSheets.Arrivals;
using CareSheets.Species;

namespace CareSheets.Pages.Stock;

/// <summary>Makes the lines of a docket.</summary>
internal sealed class DocketLineMaker(Site site)
{
    private readonly BatchFacts _batches = new(site);
    private readonly EntryFacts _facts = new(site);
    private readonly StockPicker _stock = new(site);
    private readonly HousingText _housing = new(site);
    private readonly LawAlarm _law = new(site);
    private readonly StaffCautions _cautions = new(site);
    private readonly HazardAlarm _hazards = new(site);
    private readonly BagBoxMaker _bags = new(site);

    private Words Words => site.Words;

    public DocketLine Make(Arrival arrival, OpeningPlace place, int number)
    {
        var batch = place.Batch;
        var entry = _stock.EntryOf(batch);
        return new DocketLine(
            DocketMaker.Number(number),
            batch.Line is { } line
                ? Words.Say("docket.said_line", ("line", DocketMaker.Number(line)), ("said", batch.Said.Value))
                : batch.Said.Value,
            entry?.VernacularName ?? Words[batch.Entry is null ? "docket.unnamed" : "docket.draft"],
            entry?.ScientificName.Value.ToString() ?? "",
            [.. Alarms(arrival, batch, entry).Select(a => new LatinText(a))],
            batch.Count is { } count ? DocketMaker.Number(count.Value) : Words["sentence.unknown"],
            batch.Alive is { } alive ? DocketMaker.Number(alive.Value) : "",
            [.. Known(arrival, batch, entry), .. Urgency(place)],
            entry is null ? [] : [.. _housing.All(new Delivery(arrival, batch), entry)],
            [.. (entry is null ? _hazards.Of(batch) : _cautions.Of(entry)).Select(c => new LatinText(c))]);
    }

    private IEnumerable<Fact> Known(Arrival arrival, Batch batch, Entry? entry)
    {
        yield return Place(batch);
        yield return new Fact(Words["docket.bag_here"], _bags.Brief(arrival, batch));
        yield return Release(new Delivery(arrival, batch));
        if (entry is not null)
        {
            yield return _facts.Lid(entry);
            yield return new Fact(Words["docket.first_foods"],
                entry.Foods.Count > 0 ? _facts.Plain(entry.Foods) : _facts.List("diet", entry.Diet));
        }
        yield return new Fact(Words["docket.kind"], Kind(batch));
        if (batch.Perhaps.Count > 0)
            yield return new Fact(Words["docket.perhaps"], Names(batch));
        if (batch.Unclear.Count > 0)
            yield return new Fact(Words["docket.unclear"], string.Join("; ", batch.Unclear));
        if (batch.Cause is { } cause)
            yield return new Fact(Words["docket.cause"], cause);
        if (batch.Note is { } note)
            yield return new Fact(Words["docket.note"], note);
    }

    private Fact Place(Batch batch) => new(
        Words["docket.tank"], batch.Tank ?? Words["docket.no_tank"],
        batch.System?.Value ?? (batch.Tank is null ? "" : Words["docket.own_filter"]));

    private Fact Release(Delivery delivery)
    {
        var release = site.Collection.Arrivals.Calendar.ReleaseOf(delivery.Arrival, delivery.Batch);
        return new Fact(
            Words["docket.release"], DateText.Of(release.Day, Words),
            release.Last is { } last
                ? Words.Say("docket.because", ("fish", _batches.Name(last.Batch)),
                    ("supplier", last.Arrival.Supplier.Value), ("day", DateText.Of(last.Arrival.Date.Value, Words)))
                : "");
    }

    private string Kind(Batch batch) => string.Join(Words["sentence.list_separator"],
        new[] { _batches.Kind(batch), _batches.Source(batch) }.Where(t => t.Length > 0));

    private string Names(Batch batch) => string.Join(Words["sentence.list_separator"], batch.Perhaps
        .Select(p => site.Collection.Find(p.Value)?.ScientificName.Value.ToString() ?? p.Value));

    private IEnumerable<Fact> Urgency(OpeningPlace place)
    {
        string[] parts =
        [
            place.Loading is { } loading ? Words.Say("docket.loading", ("grams", Gram(loading))) : "",
            place.Hours is { } hours ? Words.Say("docket.hours", ("hours", DocketMaker.Round(hours))) : "",
            place.Difference is { } kelvin ? Words.Say("docket.difference", ("degrees", Degrees(kelvin))) : "",
        ];
        List<string> known = [.. parts.Where(p => p.Length > 0)];
        if (known.Count > 0)
            yield return new Fact(
                Words["docket.why"], string.Join(Words["sentence.list_separator"], known),
                place.IsAssumed ? Words["docket.assumed"] : "");
    }

    private IEnumerable<string> Alarms(Arrival arrival, Batch batch, Entry? entry)
    {
        foreach (var law in _law.Of(batch, entry))
            yield return law;
        if (entry is not null && _housing.Against(batch, entry) is { } water)
            yield return water;
        if (Losses(arrival, batch) is { } losses)
            yield return losses;
    }

    private string? Losses(Arrival arrival, Batch batch)
    {
        if (LossCount.From(arrival, batch) is not { Lost: > 0 } losses)
            return null;
        var said = Words.Say("docket.losses",
            ("arrival", DocketMaker.Number(losses.OnArrival)), ("later", DocketMaker.Number(losses.Later)),
            ("count", DocketMaker.Number(losses.Of)), ("days", DocketMaker.Number(LossCount.Days)),
            ("share", (losses.Share * 100).ToString("0.#", CultureInfo.InvariantCulture)));
        return losses.IsAlarming ? Words.Say("docket.losses_alarm", ("losses", said)) : said;
    }

    private static string Gram(double grams) =>
        grams.ToString(grams < 10 ? "0.0" : "0", CultureInfo.InvariantCulture);

    private static string Degrees(double kelvin) => kelvin.ToString("0.#", CultureInfo.InvariantCulture);
}
