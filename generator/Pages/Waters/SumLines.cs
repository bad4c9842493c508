using CareSheets.Quantities;
using CareSheets.Water;

namespace CareSheets.Pages.Waters;

/// <summary>
/// The answers to sums on water, line by line, as the command and the page of the site give them. The page's
/// scripts are held to these lines by a test.
/// </summary>
public sealed class SumLines(WaterText text, WaterLimits limits)
{
    public IReadOnlyList<string> Hardness(Given<GeneralHardness> hardness) =>
    [
        text.Say(
            "hardness_units", ("given", hardness.Text),
            ("list", string.Join(", ", GeneralHardness.Dimension.Units.Where(Differs)
                .Select(u => WaterText.Show(hardness.Value.Canonical, u)).Where(t => t != hardness.Text)))),
        .. HardnessScheme.All.Select(scheme => text.Say(
            "hardness_class", ("word", text.Say($"class_{scheme.ClassOf(hardness.Value).Word}")),
            ("source", scheme.Source))),
    ];

    public IReadOnlyList<string> Blend(BlendShare blend, Given<Volume>? volume, Unit? unit)
    {
        if (blend.IsAny)
            return [text.Say("blend_any")];
        var (one, other) = (blend.OfFirst.InPercent, 100 - blend.OfFirst.InPercent);
        var share = text.Say("blend_share", ("one", Percent(one)), ("other", Percent(other)));
        if (volume is null || unit is null)
            return [share];
        string Part(double percent) => WaterText.Show(volume.Value.Canonical * percent / 100, unit);
        return [share, text.Say("blend_volume", ("all", volume.Text), ("one", Part(one)), ("other", Part(other)))];
    }

    public IReadOnlyList<string> Changed(int times, string share, string figure) =>
        [text.Say(times == 1 ? "change_one" : "change_many", Counted(times, ("share", share), ("figure", figure)))];

    public IReadOnlyList<string> Reached(int times, string share, string target) => times == 0
        ? [text.Say("change_none", ("target", target))]
        : [text.Say(times == 1 ? "reach_one" : "reach_many", Counted(times, ("share", share), ("target", target)))];

    public IReadOnlyList<string> Ammonia(
        Given<Ammonia>? total, Given<Acidity> acidity, Given<Temperature> temperature, Share share)
    {
        var lines = new List<string>
        {
            text.Say(
                "ammonia_share", ("share", Digits.Of(share.InPercent)), ("ph", Digits.Of(acidity.Value.InPH)),
                ("temperature", temperature.Text)),
        };
        if (total is not null)
            lines.AddRange(Unionised(total.Text, total.Value * share.InParts));
        lines.AddRange(Risen(total?.Value, acidity.Value.InPH + 1, temperature.Value));
        lines.Add(text.Say("ammonia_filter"));
        lines.Add(Criteria(acidity.Value, temperature.Value));
        return lines;
    }

    public IReadOnlyList<string> Oxygen(string temperature, string air, Concentration oxygen) =>
    [
        text.Say(
            "oxygen_at", ("temperature", temperature), ("air", air),
            ("oxygen", Digits.Of(oxygen.InMilligramsPerLitre))),
        .. WaterLimits.OxygenNeeds.Select(need => Need(need, oxygen)),
    ];

    public IReadOnlyList<string> Gas(CarbonateWater water, CarbonateWater aired) =>
    [
        text.Say("gas_at", ("gas", Digits.Of(water.CarbonDioxide.InMilligramsPerLitre))),
        .. water.CarbonDioxide < aired.CarbonDioxide
            ? [text.Say("gas_poor", ("aired", Digits.Of(aired.CarbonDioxide.InMilligramsPerLitre)))]
            : Array.Empty<string>(),
        .. water.CarbonDioxide > MeasuredGas.Harmful
            ? [text.Say("gas_harms", ("limit", Digits.Of(MeasuredGas.Harmful.InMilligramsPerLitre)))]
            : Array.Empty<string>(),
        .. water.CarbonDioxide > aired.CarbonDioxide
            ? [text.Say("gas_aired", ("ph", Digits.OfPH(aired.PH.InPH)))]
            : Array.Empty<string>(),
        text.Say("gas_caution"),
    ];

    /// <summary>What the same ammonia does where the pH is higher; nothing beyond the end of the scale.</summary>
    private IEnumerable<string> Risen(Ammonia? total, double pH, Temperature temperature)
    {
        if (pH > Acidity.Dimension.Maximum)
            yield break;
        var share = UnionisedAmmonia.ShareAt(Acidity.FromPH(pH), temperature).Value;
        (string, string)[] said = [("ph", Digits.Of(pH)), ("share", Digits.Of(share.InPercent))];
        yield return total is { } known
            ? text.Say("ammonia_risen_total", [.. said, ("unionised", text.Both(known * share.InParts))])
            : text.Say("ammonia_risen", said);
    }

    private IEnumerable<string> Unionised(string total, Ammonia unionised)
    {
        yield return text.Say("ammonia_unionised", ("total", total), ("unionised", text.Both(unionised)));
        var (goal, harm) = (limits.UnionisedAmmonia, limits.HarmfulAmmonia);
        yield return unionised > harm.Value
            ? text.Say("ammonia_harms", ("limit", text.Both(harm.Value)), ("source", harm.Source))
            : unionised > goal.Value
                ? text.Say("ammonia_passes", ("limit", text.Both(goal.Value)), ("source", goal.Source))
                : text.Say("ammonia_below", ("limit", text.Both(goal.Value)), ("source", goal.Source));
    }

    private string Criteria(Acidity acidity, Temperature temperature)
    {
        var acute = AmmoniaCriteria.Acute(acidity, temperature);
        var chronic = AmmoniaCriteria.Chronic(acidity, temperature);
        return acute.Ok && chronic.Ok
            ? text.Say(
                "criteria", ("acute", Digits.Of(acute.Value.InMilligramsOfNitrogen)),
                ("chronic", Digits.Of(chronic.Value.InMilligramsOfNitrogen)))
            : text.Say("criteria_none");
    }

    private string Need(string need, Concentration oxygen)
    {
        var limit = limits.OxygenFor(need)!;
        return text.Say(
            oxygen >= limit.Value ? "oxygen_meets" : "oxygen_fails",
            ("need", need), ("limit", Digits.Of(limit.Value.InMilligramsPerLitre)), ("source", limit.Source));
    }

    private static bool Differs(Unit unit) => unit.Key is not "partPerMillion";

    private static string Percent(double percent) => Digits.Fixed(percent, 1);

    private static (string, string)[] Counted(int times, params (string, string)[] values) =>
        times == 1 ? values : [("count", Digits.Of(times)), .. values];
}
