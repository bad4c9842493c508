using CareSheets.Quantities;
using CareSheets.Water.Bags;

namespace CareSheets.Pages.Waters;

/// <summary>
/// What the sum of a transport bag says: one order of what to do, the step of pH first; then, to be folded, the
/// outcomes and cautions behind it. Nothing in the latter asks for what the order forbids.
/// </summary>
public sealed class BagLines(WaterText text)
{
    private readonly BagOrder _order = new(text);

    /// <summary>The order and what is said of every bag; what stands over the reasons, and those.</summary>
    public IReadOnlyList<string> All(BagOutcome outcome) =>
    [
        .. _order.Of(outcome), text.Say("caution_NoAirstone"), text.Say("caution_SourcesDisagree"),
        text.Say("bag_why"), .. Outcomes(outcome), .. Cautions(outcome),
    ];

    /// <summary>Ammonia now, aired and, where they may mix, mixed; a span where something is not measured.</summary>
    private IEnumerable<string> Outcomes(BagOutcome outcome)
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
        if (outcome.Advice is BagAdvice.Briefly or BagAdvice.MayMix)
        {
            foreach (var step in outcome.Steps)
                yield return Step(step);
        }
        if (outcome is { HydrogenRatio: { } ratio, Rise: { } rise })
            yield return Digits.OfPH(rise.InPH) == Digits.OfPH(0)
                ? text.Say("bag_tank_same")
                : text.Say("bag_tank", ("rise", Digits.OfPH(Math.Abs(rise.InPH))), ("ratio", Digits.Of(ratio)));
    }

    /// <summary>Those that do not stand above already.</summary>
    private IEnumerable<string> Cautions(BagOutcome outcome)
    {
        foreach (var caution in outcome.Cautions)
        {
            if (caution is BagCaution.WarmthApart)
                yield return text.Say("caution_WarmthApart");
            else if (caution is BagCaution.NotMeasured)
                yield return text.Say(
                    "caution_NotMeasured", ("figures", string.Join(", ", Unmeasured(outcome))),
                    ("kh", Degrees(Assumed.Alkalinity)), ("ph", text.Span(Assumed.BagPH)));
        }
    }

    private string Step(MixStep step)
    {
        var volumes = ("volumes", Digits.Of(step.Volumes));
        return step.Unionised is { } unionised
            ? text.Say("bag_step", volumes, ("ph", text.Span(step.PH)), ("unionised", text.Span(unionised)))
            : text.Say("bag_step_ph", volumes, ("ph", text.Span(step.PH)));
    }

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
}
