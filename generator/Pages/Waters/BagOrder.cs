using CareSheets.Quantities;
using CareSheets.Water.Bags;

namespace CareSheets.Pages.Waters;

/// <summary>What to do with a transport bag, in its order: which water, how warm, how fast.</summary>
internal sealed class BagOrder(WaterText text)
{
    public IEnumerable<string> Of(BagOutcome outcome)
    {
        var first = outcome.Cautions.Contains(BagCaution.HarmsNow)
            ? text.Say("order_first", ("limit", text.Both(outcome.Limits.HarmfulAmmonia.Value))) + " "
            : "";
        yield return first + Water(outcome);
        if (outcome.Advice == BagAdvice.ReceiveApart)
        {
            yield return text.Say("apart_move");
            yield return text.Say(outcome.Reason == BagReason.HarmsAfloat ? "apart_slowly" : "apart_days");
            yield break;
        }
        yield return Warmth(outcome);
        yield return text.Say($"advice_{outcome.Advice}", ("reason", Reason(outcome)));
    }

    /// <summary>Whether they go into this tank, by the step of pH.</summary>
    private string Water(BagOutcome outcome)
    {
        var step = outcome.Limits.AcidityStep;
        (string, string)[] limit = [("limit", Digits.Fixed(step.Value.InPH, 2)), ("source", step.Source)];
        return (outcome.Reason, outcome.Rise) switch
        {
            (BagReason.AcidityApart, { } rise) => text.Say(
                rise.InPH > 0 ? "apart_higher" : "apart_lower", [.. limit, ("rise", Step(rise))]),
            (BagReason.HarmsAfloat, _) => text.Say("apart_afloat"),
            (_, { } rise) => text.Say("step_within", [.. limit, ("rise", Step(rise))]),
            _ => text.Say("step_unknown", limit),
        };
    }

    private string Warmth(BagOutcome outcome)
    {
        var limit = ("limit", Digits.Fixed(outcome.Limits.TemperatureStep.Value.InKelvins, 1));
        return outcome is not { Afloat: { } afloat, Warming: { } apart } ? text.Say("float_unknown", limit)
            : afloat == default ? text.Say("float_short", limit)
            : text.Say(
                "float_minutes", limit, ("apart", Digits.Fixed(Math.Abs(apart.InKelvins), 1)),
                ("minutes", Digits.Of(Math.Ceiling(afloat.InMinutes))));
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
                "reason_Rises", ("rise", Step(outcome.Rise!.Value)),
                ("limit", Digits.Fixed(limits.MixingRise.Value.InPH, 2))),
            BagReason.AmmoniaUnknown or BagReason.TankUnknown or BagReason.HoursUnknown or BagReason.StaysLow =>
                text.Say($"reason_{outcome.Reason}"),
            BagReason.AcidityApart or BagReason.HarmsAfloat => Water(outcome),
        };
    }

    private static string Step(AcidityDifference rise) => Digits.Fixed(Math.Abs(rise.InPH), 2);

    private static string Hours(Elapsed elapsed) => Digits.Of(elapsed.InHours);
}
