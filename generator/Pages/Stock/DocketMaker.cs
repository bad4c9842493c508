using System.Globalization;
using CareSheets.Arrivals;

namespace CareSheets.Pages.Stock;

/// <summary>Makes the docket of an arrival.</summary>
internal sealed class DocketMaker(Site site)
{
    private readonly DocketLineMaker _lines = new(site);
    private readonly BagBoxMaker _bags = new(site);
    private readonly StockPicker _stock = new(site);

    private Words Words => site.Words;

    public Docket Make(Arrival arrival)
    {
        var address = Routes.Docket(arrival.Name);
        var title = Words.Say("docket.title",
            ("supplier", arrival.Supplier.Value), ("day", DateText.Of(arrival.Date.Value, Words)));
        var order = OpeningOrder.Of(arrival, _stock.EntryOf);
        return new Docket
        {
            Address = address,
            Frame = site.Frames.Make(address, Words.Say("docket.tab", ("title", title), ("name", arrival.Name)),
                title, isListed: false),
            Paper = site.Collection.Store.Paper.ToLowerInvariant(),
            Heading = title,
            Facts = [.. Facts(arrival)],
            Bags = [.. arrival.Bags.Select(b => _bags.Make(arrival, b))],
            BagsNote = _bags.Note,
            Lines = [.. order.Select((place, i) => _lines.Make(arrival, place, i + 1))],
            OrderNote = Words[order.Any(IsKnown) ? "docket.order_note" : "docket.order_unknown"],
            Systems = [.. Systems(arrival)],
            SystemsNote = Words.Say("docket.systems_note",
                ("days", Number(site.Collection.Store.Observation.Days)),
                ("source", site.Collection.Store.Observation.Source)),
            Everywhere = new StaffCautions(site).Everywhere,
            PageHref = Routes.Between(address, Routes.Papers),
        };
    }

    private static bool IsKnown(OpeningPlace place) =>
        place is not { Loading: null, Hours: null, Difference: null };

    private IEnumerable<Fact> Facts(Arrival arrival)
    {
        if (arrival.List is { } list)
            yield return new Fact(Words["docket.list"], list.Value);
        if (arrival.Packed is { } packed)
            yield return new Fact(Words["docket.packed"], Moment(packed.Value));
        yield return new Fact(Words["docket.opened"],
            arrival.Opened is { } opened ? Moment(opened.Value) : Words["docket.fill_in"],
            arrival.HoursClosed(null) is { } hours ? Words.Say("docket.hours", ("hours", Round(hours))) : "");
        yield return new Fact(Words["docket.batches"], Number(arrival.Batches.Count), Promised(arrival));
    }

    private string Promised(Arrival arrival)
    {
        var promised = Words.Count("docket.promised", arrival.Batches.Sum(b => b.Count?.Value ?? 0));
        if (arrival.Batches.Count(b => b.Count is null) is > 0 and var unknown)
            promised = Words.Say("docket.promised_beside",
                ("promised", promised), ("beside", Words.Count("docket.uncounted", unknown)));
        return arrival.Batches.All(b => b.IsUnpacked)
            ? Words.Say("docket.promised_alive", ("promised", promised),
                ("alive", Number(arrival.Batches.Sum(b => b.Alive!.Value))))
            : promised;
    }

    /// <summary>Each system that fish of this arrival go into, with the batch that all in it wait for.</summary>
    private IEnumerable<Fact> Systems(Arrival arrival) =>
        from name in arrival.Batches.Select(b => b.System?.Value).OfType<string>().Distinct()
        let last = site.Collection.Arrivals.Calendar.LastOf(name)
        where last is not null
        select new Fact(
            name, DateText.Of(last.End, Words),
            Words.Say("docket.because", ("fish", new BatchFacts(site).Name(last.Batch)),
                ("supplier", last.Arrival.Supplier.Value), ("day", DateText.Of(last.Arrival.Date.Value, Words))));

    private string Moment(DateTime moment) => Words.Say("docket.moment",
        ("day", DateText.Of(DateOnly.FromDateTime(moment), Words)),
        ("time", moment.ToString("HH:mm", CultureInfo.InvariantCulture)));

    internal static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>For hours and grams: nobody needs their decimals.</summary>
    internal static string Round(double number) =>
        Math.Round(number, MidpointRounding.AwayFromZero).ToString("0", CultureInfo.InvariantCulture);
}
