using System.ComponentModel;
using CareSheets.Diagnostics;
using CareSheets.Pages.Waters;
using CareSheets.Quantities;
using CareSheets.Reading;
using CareSheets.Water;
using Spectre.Console.Cli;

namespace CareSheets.Commands.Waters;

internal sealed class MixSettings : ContentSettings
{
    [CommandArgument(0, "<first>")]
    [Description("A water: \"pH 6.2, 1 °dKH, 24 °C\", the name of a system, or tap.")]
    public string First { get; init; } = "";

    [CommandArgument(1, "<second>")]
    [Description("The other water.")]
    public string Second { get; init; } = "";

    [CommandOption("--volume <VOLUME>")]
    [Description("Of the first water; without volumes, equal parts.")]
    public string? Volume { get; init; }

    [CommandOption("--other-volume <VOLUME>")]
    [Description("Of the second water.")]
    public string? OtherVolume { get; init; }
}

/// <summary>Two waters mixed by what mixing keeps, alkalinity and carbon; the pH follows.</summary>
internal sealed class MixCommand : WaterCommand<MixSettings>
{
    private const string Why = "Mixing keeps alkalinity and carbon, not pH, so the sum needs it of both waters.";

    protected override WaterAnswer? Answer(MixSettings settings, WaterDesk desk)
    {
        var one = Water(desk, "first", settings.First);
        var other = Water(desk, "second", settings.Second);
        var (volume, otherVolume) = (1.0, 1.0);
        if (settings.Volume is not null || settings.OtherVolume is not null)
        {
            volume = desk.Need<Volume>("--volume", settings.Volume)?.Value.InLitres ?? 0;
            otherVolume = desk.Need<Volume>("--other-volume", settings.OtherVolume)?.Value.InLitres ?? 0;
        }
        if (one is null || other is null || desk.Bag.HasErrors)
            return null;
        if (desk.Accept(CarbonateWater.Mix(one, volume, other, otherVolume)) is not { } mixed ||
            desk.Accept(CarbonateWater.Aired(mixed.Alkalinity, mixed.Temperature)) is not { } aired)
            return null;
        return new WaterAnswer([Line(mixed, aired, desk)], new
        {
            ph = mixed.PH.InPH,
            airedPH = aired.PH.InPH,
            carbonateHardness = mixed.Alkalinity.InMilligramsPerLitre,
            carbonDioxide = mixed.CarbonDioxide.InMilligramsPerLitre,
            celsius = mixed.Temperature.InCelsius,
        });
    }

    private static string Line(CarbonateWater mixed, CarbonateWater aired, WaterDesk desk) => desk.Text.Say(
        "mixed", ("ph", Digits.OfPH(mixed.PH.InPH)), ("aired", Digits.OfPH(aired.PH.InPH)),
        ("kh", WaterText.Show(mixed.Alkalinity.Canonical, DimensionCatalogue.CarbonateHardness.For(UnitSystem.Metric))),
        ("temperature", WaterText.Show(mixed.Temperature.InCelsius, DimensionCatalogue.Temperature.Canonical)));

    private static CarbonateWater? Water(WaterDesk desk, string argument, string typed)
    {
        if (WaterDescription.Read(desk, argument, typed) is not { } described)
            return null;
        if (described is { PH: { } pH, Alkalinity: { } kh, Temperature: { } warmth })
            return desk.Accept(CarbonateWater.Of(kh, pH, warmth));
        Tell<Acidity>(desk, argument, typed, described.PH is null);
        Tell<CarbonateHardness>(desk, argument, typed, described.Alkalinity is null);
        Tell<Temperature>(desk, argument, typed, described.Temperature is null);
        return null;
    }

    private static void Tell<T>(WaterDesk desk, string argument, string typed, bool isMissing)
        where T : struct, IQuantity<T>
    {
        if (isMissing)
            desk.Bag.Add(
                WaterCodes.Missing, desk.Source(argument, typed).Span, ("dimension", DimensionName.Of(T.Dimension)),
                ("why", Why), ("example", WaterDescription.Example));
    }
}
