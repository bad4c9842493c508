using CareSheets.Quantities;

namespace CareSheets.Water.Bags;

/// <summary>
/// Opening a transport bag as a sum: under way its CO₂ rises, its pH falls and its ammonia gathers as
/// the harmless ion; opened, CO₂ leaves and the ammonia turns.
/// </summary>
/// <remarks>
/// The course is described by Amend, Croy, Goven, Johnson and McCarthy 1982, Trans. Am. Fish. Soc.
/// 111:603–611 (abstract). The rules of the advice are the shop's limits, not a published protocol: no
/// controlled comparison of fast and slow transfer of freshwater ornamental fishes was found.
/// </remarks>
public static class BagCheck
{
    /// <summary>In pH: 8.3 − 8 is a little more than 0.3 to a computer, and to nobody else.</summary>
    internal const double Noise = 1e-9;

    public static SumResult<BagOutcome> Judge(BagReading bag, ReceivingWater tank, WaterLimits limits)
    {
        var scenarios = new BagScenarios(bag, tank);
        return scenarios.AiredPH().Then(airedPH =>
            scenarios.Steps().Then(steps =>
            Known(bag, scenarios.Now).Then(now =>
            Known(bag, total => BagScenarios.Unionised(total, airedPH, scenarios.Warmer)).Then(aired =>
            UnionisedAmmonia.LargestTotal(limits.UnionisedAmmonia.Value, airedPH.Max!.Value, scenarios.Warmer)
                .Then<BagOutcome>(largest =>
            Advise(new BagOutcome
            {
                Bag = bag,
                Tank = tank,
                Now = now,
                AiredPH = airedPH,
                Aired = aired,
                Steps = steps,
                LargestTotal = largest,
                Rise = tank.PH - bag.PH,
                Warming = tank.Temperature - bag.Temperature,
                Afloat = Afloat(bag, tank, limits),
                Advice = BagAdvice.AtOnce,
                Reason = BagReason.AmmoniaUnknown,
                Cautions = [],
                Limits = limits,
            }))))));
    }

    private static SumResult<Range<Ammonia>?> Known(
        BagReading bag, Func<Ammonia, SumResult<Range<Ammonia>>> sum) => bag.Ammonia is { } total
        ? sum(total).Then<Range<Ammonia>?>(range => range)
        : (Range<Ammonia>?)null;

    private static Elapsed? Afloat(BagReading bag, ReceivingWater tank, WaterLimits limits)
    {
        if (tank.Temperature is not { } warmth)
            return null;
        var afloat = FloatedBag.Until(
            bag.Temperature, warmth, limits.TemperatureStep.Value, limits.FloatTime.Value);
        return afloat.Ok ? afloat.Value : null;
    }

    private static BagOutcome Advise(BagOutcome outcome)
    {
        var reason = ReasonOf(outcome);
        return outcome with
        {
            Reason = reason,
            Advice = reason switch
            {
                BagReason.AcidityApart or BagReason.HarmsAfloat => BagAdvice.ReceiveApart,
                BagReason.AmmoniaUnknown or BagReason.WouldHarm => BagAdvice.AtOnce,
                BagReason.WouldPassGoal or BagReason.TankUnknown or BagReason.LongUnderWay or
                    BagReason.HoursUnknown or BagReason.Rises => BagAdvice.Briefly,
                BagReason.StaysLow => BagAdvice.MayMix,
            },
            Cautions = [.. CautionsOf(outcome)],
        };
    }

    private static BagReason ReasonOf(BagOutcome outcome)
    {
        var (bag, limits) = (outcome.Bag, outcome.Limits);
        return IsAcidityApart(outcome) ? BagReason.AcidityApart
            : HarmsNow(outcome) && outcome.Afloat != default(Elapsed) ? BagReason.HarmsAfloat
            : outcome.Worst is not { } worst ? BagReason.AmmoniaUnknown
            : worst > limits.HarmfulAmmonia.Value ? BagReason.WouldHarm
            : worst > limits.UnionisedAmmonia.Value ? BagReason.WouldPassGoal
            : outcome.Tank.PH is null ? BagReason.TankUnknown
            : bag.UnderWay is not { } hours ? BagReason.HoursUnknown
            : hours > limits.ShortTransit.Value ? BagReason.LongUnderWay
            : !(outcome.Rise?.InPH <= limits.MixingRise.Value.InPH + Noise) ? BagReason.Rises
            : BagReason.StaysLow;
    }

    private static bool IsAcidityApart(BagOutcome outcome) =>
        outcome.Rise is { } rise && Math.Abs(rise.InPH) > outcome.Limits.AcidityStep.Value.InPH + Noise;

    private static bool HarmsNow(BagOutcome outcome) => outcome.Now?.Max > outcome.Limits.HarmfulAmmonia.Value;

    private static IEnumerable<BagCaution> CautionsOf(BagOutcome outcome)
    {
        var (bag, tank) = (outcome.Bag, outcome.Tank);
        if (HarmsNow(outcome))
            yield return BagCaution.HarmsNow;
        if (IsAcidityApart(outcome))
            yield return BagCaution.AcidityApart;
        if (outcome.Afloat > default(Elapsed))
            yield return BagCaution.WarmthApart;
        if (bag is not { PH: not null, Ammonia: not null, Alkalinity: not null, UnderWay: not null } ||
            tank is not { PH: not null, Temperature: not null, Alkalinity: not null })
            yield return BagCaution.NotMeasured;
        yield return BagCaution.NoAirstone;
        yield return BagCaution.SourcesDisagree;
    }
}
