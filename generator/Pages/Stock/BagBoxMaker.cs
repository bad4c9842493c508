using CareSheets.Arrivals;
using CareSheets.Quantities;
using CareSheets.Water.Bags;

namespace CareSheets.Pages.Stock;

/// <summary>Makes the box of a measured bag on the docket: its figures, how to open it, and why.</summary>
internal sealed class BagBoxMaker(Site site)
{
    private readonly BagSentences _sentences = new(site.Words);

    private Words Words => site.Words;

    public BagBox Make(Arrival arrival, MeasuredBag bag)
    {
        var outcome = Judge(arrival, bag);
        return new BagBox(
            bag.Tank is { } tank
                ? Words.Say("docket.bag_of_tank", ("tank", tank.Value))
                : Words.Say("docket.bag", ("system", bag.System!.Value)),
            [.. Facts(arrival, bag)],
            outcome is null ? Words["docket.bag_unjudged"] : _sentences.Advice(outcome),
            outcome is null ? [] : [.. _sentences.Reasons(outcome)]);
    }

    public string Note => _sentences.Always;

    /// <summary>How to open the bag of a batch, in few words; what to measure first where nobody has.</summary>
    public string Brief(Arrival arrival, Batch batch) =>
        arrival.BagOf(batch) is not { } bag ? Words["docket.bag_unmeasured"]
        : Judge(arrival, bag) is { } outcome ? Words[$"bag_advice.{outcome.Advice}"]
        : Words["docket.bag_unjudged"];

    /// <summary>Nothing where the bag's temperature is unknown or its figures are beyond the sums.</summary>
    private BagOutcome? Judge(Arrival arrival, MeasuredBag bag)
    {
        if (Worst<Temperature>(bag.Temperature) is not { } temperature)
            return null;
        var reading = new BagReading(temperature)
        {
            PH = Worst<Acidity>(bag.Acidity),
            Ammonia = Worst<Ammonia>(bag.Ammonia),
            Alkalinity = Worst<CarbonateHardness>(bag.CarbonateHardness),
            UnderWay = arrival.HoursClosed(bag) is { } hours ? Elapsed.FromHours(hours) : null,
        };
        var judged = BagCheck.Judge(reading, Receiving(bag), site.Collection.Store.WaterLimits);
        return judged.Ok ? judged.Value : null;
    }

    /// <summary>Of a tank with a filter of its own nothing is recorded.</summary>
    private ReceivingWater Receiving(MeasuredBag bag)
    {
        var system = bag.Tank is null ? bag.System!.Value : "";
        var water = site.Collection.Store.Systems.FirstOrDefault(s => s.Name == system);
        StatedRange? Figure(string field) => water?.Figures.GetValueOrDefault(field);
        return new ReceivingWater(system)
        {
            Temperature = Worst<Temperature>(Figure("temperature")),
            PH = Worst<Acidity>(Figure("ph")),
            Alkalinity = Worst<CarbonateHardness>(Figure("carbonateHardness")),
        };
    }

    /// <summary>The upper end: warmer, less acid water and more ammonia all speak for haste.</summary>
    private static T? Worst<T>(StatedRange? range)
        where T : struct, IQuantity<T> => range?.High is { } high ? T.FromCanonical(high) : null;

    private IEnumerable<Fact> Facts(Arrival arrival, MeasuredBag bag)
    {
        if (arrival.HoursClosed(bag) is { } hours)
            yield return new Fact(Words["docket.under_way"],
                Words.Say("docket.hours", ("hours", DocketMaker.Round(hours))));
        if (bag.Temperature is { } temperature)
            yield return new Fact(Label("temperature"), Show(temperature));
        if (bag.Acidity is { } acidity)
            yield return new Fact(Label("ph"), Show(acidity));
        if (bag.CarbonateHardness is { } hardness)
            yield return new Fact(Label("carbonateHardness"), Show(hardness));
        if (bag.Ammonia is { } ammonia)
            yield return new Fact(Words["docket.ammonia"], Show(ammonia));
    }

    private string Label(string field) =>
        site.Collection.Ranges.FirstOrDefault(r => r.Field == field) is { } declared
            ? RangeRowMaker.LabelOf(declared, Words)
            : field;

    private string Show(StatedRange range) => site.Quantities.Show(range, Rounding.Nearest).Both;
}
