using System.Globalization;
using CareSheets.Arrivals;
using CareSheets.Quantities;

namespace CareSheets.Pages.Stock;

/// <summary>Makes the box of a measured bag on the docket.</summary>
internal sealed class BagCheckMaker(Site site)
{
    private Words Words => site.Words;

    public BagCheck Make(Arrival arrival, MeasuredBag bag) => new(
        Words.Say("docket.bag", ("system", bag.System.Value)), [.. Facts(arrival, bag)], [.. Advice(bag)]);

    private IEnumerable<Fact> Facts(Arrival arrival, MeasuredBag bag)
    {
        if (arrival.HoursClosed(bag) is { } hours)
            yield return new Fact(Words["docket.closed"],
                Words.Say("docket.hours", ("hours", DocketMaker.Round(hours))));
        if (bag.Temperature is { } temperature)
            yield return new Fact(Label("temperature"), Show(temperature));
        if (bag.Acidity is { } acidity)
            yield return new Fact(Label("ph"), Show(acidity));
        if (bag.CarbonateHardness is { } hardness)
            yield return new Fact(Label("carbonateHardness"), Show(hardness));
        if (bag.Ammonia is { } ammonia)
            yield return new Fact(Words["docket.ammonia"], Words.Say("docket.ammonia_as_n",
                ("milligrams", ammonia.AsNitrogen.ToString("0.##", CultureInfo.InvariantCulture))));
    }

    private IEnumerable<string> Advice(MeasuredBag bag)
    {
        yield return Words["docket.bag_general"];
        _ = bag;
    }

    private string Label(string field) =>
        site.Collection.Ranges.FirstOrDefault(r => r.Field == field) is { } declared
            ? RangeRowMaker.LabelOf(declared, Words)
            : field;

    private string Show(StatedRange range) => site.Quantities.Show(range, Rounding.Nearest).Both;
}
