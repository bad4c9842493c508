using CareSheets.Quantities;
using CareSheets.Water.Bags;

namespace CareSheets.Pages.Waters;

/// <summary>What the sum of a transport bag says: the advice in one sentence, the outcomes, the cautions.</summary>
public sealed class BagLines(WaterText text)
{
    /// <summary>What to do and why, in one sentence.</summary>
    public string Advice(BagOutcome outcome) => text.Say(
        $"advice_{outcome.Advice}", ("reason", Reason(outcome)));

    public IReadOnlyList<string> All(BagOutcome outcome) =>
        [Advice(outcome), .. Outcomes(outcome), .. Cautions(outcome)];

    /// <summary>Ammonia now, aired and mixed; a span where something was not measured.</summary>
    public IEnumerable<string> Outcomes(BagOutcome outcome)
    {
        if (outcome is { Now: { } now, Aired: { } aired })
        {
            yield return text.Say("bag_now", ("unionised", text.Span(now)));
            yield return text.Say(
                "bag_aired", ("ph", text.Span(outcome.AiredPH)), ("unionised", text.Span(aired)));
        }
        else
            yield return text.Say(
                "bag_aired_ph", ("ph", text.Span(outcome.AiredPH)), ("total", text.Both(outcome.LargestTotal)),
                ("limit", text.Both(outcome.Limits.UnionisedAmmonia.Value)));
        foreach (var step in outcome.Steps)
            yield return Step(step);
        if (outcome is { HydrogenRatio: { } ratio, Rise: { } rise })
            yield return text.Say(
                "bag_tank", ("rise", Digits.OfPH(Math.Abs(rise.InPH))), ("ratio", Digits.Of(ratio)));
    }

    public IEnumerable<string> Cautions(BagOutcome outcome) => outcome.Cautions.Select(c => Caution(c, outcome));

    private string Step(MixStep step)
    {
        var volumes = ("volumes", Digits.Of(step.Volumes));
        return step.Unionised is { } unionised
            ? text.Say("bag_step", volumes, ("ph", text.Span(step.PH)), ("unionised", text.Span(unionised)))
            : text.Say("bag_step_ph", volumes, ("ph", text.Span(step.PH)));
    }

    private string Reason(BagOutcome outcome)
    {
        var limits = outcome.Limits;
        return outcome.Reason switch
        {
            BagReason.WouldHarm => text.Say(
                "reason_WouldHarm", ("worst", text.Both(outcome.Worst!.Value)),
                ("limit", text.Both(limits.HarmfulAmmonia.Value))),
            BagReason.WouldPassGoal => text.Say(
                "reason_WouldPassGoal", ("worst", text.Both(outcome.Worst!.Value)),
                ("limit", text.Both(limits.UnionisedAmmonia.Value))),
            BagReason.LongUnderWay => text.Say(
                "reason_LongUnderWay", ("hours", Hours(outcome.Bag.UnderWay!.Value)),
                ("limit", Hours(limits.ShortTransit.Value))),
            BagReason.Rises when outcome.Rise is null => text.Say("reason_BagUnknown"),
            BagReason.Rises => text.Say(
                "reason_Rises", ("rise", Digits.Fixed(outcome.Rise!.Value.InPH, 2)),
                ("limit", Digits.Fixed(limits.MixingRise.Value.InPH, 2))),
            BagReason.AmmoniaUnknown or BagReason.TankUnknown or BagReason.HoursUnknown or BagReason.StaysLow =>
                text.Say($"reason_{outcome.Reason}"),
        };
    }

    private string Caution(BagCaution caution, BagOutcome outcome) => caution switch
    {
        BagCaution.HarmsNow => text.Say(
            "caution_HarmsNow", ("limit", text.Both(outcome.Limits.HarmfulAmmonia.Value))),
        BagCaution.AcidityApart => text.Say(
            "caution_AcidityApart", ("limit", Digits.Fixed(outcome.Limits.AcidityStep.Value.InPH, 2)),
            ("source", outcome.Limits.AcidityStep.Source)),
        BagCaution.WarmthApart => text.Say(
            "caution_WarmthApart", ("apart", Digits.Fixed(Math.Abs(outcome.Warming!.Value.InKelvins), 1)),
            ("limit", Digits.Fixed(outcome.Limits.TemperatureStep.Value.InKelvins, 1)),
            ("minutes", Digits.Of(Math.Ceiling(outcome.Afloat!.Value.InMinutes)))),
        BagCaution.NotMeasured => text.Say(
            "caution_NotMeasured", ("figures", string.Join(", ", Unmeasured(outcome))),
            ("kh", Degrees(Assumed.Alkalinity)), ("ph", text.Span(Assumed.BagPH))),
        BagCaution.NoAirstone or BagCaution.SourcesDisagree => text.Say($"caution_{caution}"),
    };

    private IEnumerable<string> Unmeasured(BagOutcome outcome)
    {
        var (bag, tank) = (outcome.Bag, outcome.Tank);
        (bool, string)[] known =
        [
            (bag.PH is not null, "bag_ph"), (bag.Ammonia is not null, "bag_ammonia"),
            (bag.Alkalinity is not null, "bag_alkalinity"), (bag.UnderWay is not null, "bag_hours"),
            (tank.PH is not null, "tank_ph"), (tank.Temperature is not null, "tank_temperature"),
            (tank.Alkalinity is not null, "tank_alkalinity"),
        ];
        return known.Where(k => !k.Item1).Select(k => text.Say($"unmeasured_{k.Item2}"));
    }

    private string Degrees(Range<CarbonateHardness> range) => text.Span(
        Digits.Of(range.Min!.Value.InGermanDegrees), Digits.Of(range.Max!.Value.InGermanDegrees));

    private static string Hours(Elapsed elapsed) => Digits.Of(elapsed.InHours);
}
