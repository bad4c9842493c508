using System.Globalization;
using CareSheets.Quantities;
using CareSheets.Water.Bags;

namespace CareSheets.Pages.Stock;

/// <summary>How to open a bag, in sentences for whoever has wet hands.</summary>
internal sealed class BagSentences(Words words)
{
    private static readonly BagCaution[] OfEveryBag = [BagCaution.NoAirstone, BagCaution.SourcesDisagree];

    public string Advice(BagOutcome outcome) => words.Say("bag.advice",
        ("advice", words[$"bag_advice.{outcome.Advice}"]), ("reason", Reason(outcome)));

    /// <summary>The sums behind the advice, then what has to be said beside it.</summary>
    public IEnumerable<string> Reasons(BagOutcome outcome)
    {
        if (outcome is { Now: { } now, Aired: { } aired })
            yield return words.Say(
                "bag.sums", ("now", Show(now)), ("ph", Show(outcome.AiredPH)), ("aired", Show(aired)),
                ("limit", Show(outcome.Limits.HarmfulAmmonia.Value)), ("source", outcome.Limits.HarmfulAmmonia.Source));
        foreach (var caution in outcome.Cautions.Except(OfEveryBag).Where(c => Matters(c, outcome.Advice)))
            yield return Caution(outcome, caution);
    }

    /// <summary>What holds for all bags and is said once.</summary>
    public string Always => string.Join(' ', OfEveryBag.Select(c => words[$"bag_caution.{c}"]));

    /// <summary>Nobody floats a bag whose fish go elsewhere first.</summary>
    private static bool Matters(BagCaution caution, BagAdvice advice) =>
        caution != BagCaution.WarmthApart || advice != BagAdvice.ReceiveApart;

    private string Reason(BagOutcome outcome) => outcome.Reason switch
    {
        BagReason.WouldHarm => words.Say("bag_reason.WouldHarm", ("worst", Show(outcome.Worst!.Value)),
            ("limit", Show(outcome.Limits.HarmfulAmmonia.Value))),
        BagReason.WouldPassGoal => words.Say("bag_reason.WouldPassGoal", ("worst", Show(outcome.Worst!.Value)),
            ("limit", Show(outcome.Limits.UnionisedAmmonia.Value))),
        BagReason.LongUnderWay => words.Say("bag_reason.LongUnderWay",
            ("hours", Number(outcome.Limits.ShortTransit.Value.InHours))),
        BagReason.Rises => words.Say("bag_reason.Rises", ("rise", Signed(outcome.Rise!.Value.InPH))),
        BagReason.AmmoniaUnknown or BagReason.TankUnknown or BagReason.HoursUnknown or BagReason.StaysLow or
            BagReason.AcidityApart or BagReason.HarmsAfloat =>
            words[$"bag_reason.{outcome.Reason}"],
    };

    private string Caution(BagOutcome outcome, BagCaution caution) => caution switch
    {
        BagCaution.AcidityApart => words.Say("bag_caution.AcidityApart", ("rise", Signed(outcome.Rise!.Value.InPH)),
            ("ratio", Number(outcome.HydrogenRatio!.Value))),
        BagCaution.WarmthApart => words.Say(
            $"bag_caution.{(outcome.Warming!.Value.InKelvins > 0 ? "Warmer" : "Cooler")}",
            ("degrees", Tenth(Math.Abs(outcome.Warming!.Value.InKelvins))),
            ("minutes", Minutes(outcome.Afloat!.Value))),
        BagCaution.HarmsNow or BagCaution.NotMeasured or BagCaution.NoAirstone or BagCaution.SourcesDisagree =>
            words[$"bag_caution.{caution}"],
    };

    private string Show(Range<Ammonia> range) => range.IsSingle
        ? Show(range.Max!.Value)
        : words.Say("bag.span", ("low", Figure(range.Min!.Value)), ("high", Show(range.Max!.Value)));

    private string Show(Range<Acidity> range)
    {
        var (low, high) = (Tenth(range.Min!.Value.InPH), Tenth(range.Max!.Value.InPH));
        return low == high ? high : words.Say("bag.span", ("low", low), ("high", high));
    }

    private string Show(Ammonia ammonia) => words.Say("bag.unionised", ("milligrams", Figure(ammonia)));

    /// <summary>In mg/L as NH₃, for the limits are stated so.</summary>
    private static string Figure(Ammonia ammonia) =>
        ammonia.InMilligramsOfAmmonia.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Tenth(double number) => number.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Signed(double number) => number.ToString("+0.0;−0.0;0", CultureInfo.InvariantCulture);

    private static string Number(double number) =>
        number.ToString(number < 10 ? "0.#" : "0", CultureInfo.InvariantCulture);

    /// <summary>To the next five minutes, for nobody stands by with a watch.</summary>
    private static string Minutes(Elapsed time) =>
        (Math.Ceiling(time.InMinutes / 5) * 5).ToString("0", CultureInfo.InvariantCulture);
}
