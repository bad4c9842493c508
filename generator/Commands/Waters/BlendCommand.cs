using System.ComponentModel;
using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Water;
using Spectre.Console.Cli;

namespace CareSheets.Commands.Waters;

internal sealed class BlendSettings : ContentSettings
{
    [CommandArgument(0, "<first>")]
    [Description("What the first water has: hardness, carbonate hardness, conductivity, salt or temperature.")]
    public string First { get; init; } = "";

    [CommandArgument(1, "<second>")]
    [Description("What the second water has, in any unit of the same.")]
    public string Second { get; init; } = "";

    [CommandArgument(2, "<target>")]
    [Description("What the blend should have.")]
    public string Target { get; init; } = "";

    [CommandOption("--volume <VOLUME>")]
    [Description("How much of the blend is needed, as in \"100 L\" or \"20 US gal\".")]
    public string? Volume { get; init; }
}

/// <summary>How much of each of two waters meets a target.</summary>
internal sealed class BlendCommand : WaterCommand<BlendSettings>
{
    protected override WaterAnswer? Answer(BlendSettings settings, WaterDesk desk)
    {
        var volume = desk.Read<Volume>("--volume", settings.Volume);
        var common = Proportional.Common([settings.First, settings.Second, settings.Target])
            ?? DimensionCatalogue.GeneralHardness;
        if (common == DimensionCatalogue.Acidity)
        {
            desk.Bag.Add(WaterCodes.AcidityDoesNotBlend, SourceSpan.None);
            return null;
        }
        var one = desk.Read("first", settings.First, common);
        var other = desk.Read("second", settings.Second, common);
        var target = desk.Read("target", settings.Target, common);
        if (one is null || other is null || target is null || desk.Bag.HasErrors)
            return null;
        var share = desk.Accept(Share(one, other, target), target.Unit);
        return share is null ? null : new WaterAnswer(
            desk.Lines.Blend(share, volume, volume is null ? null : UnitOf(settings.Volume!)),
            new { first = share.OfFirst.InParts, second = 1 - share.OfFirst.InParts, any = share.IsAny });
    }

    private static SumResult<BlendShare> Share(StatedRange one, StatedRange other, StatedRange target)
    {
        SumResult<BlendShare> Of<T>()
            where T : struct, IQuantity<T> => Blend.For(Value<T>(one), Value<T>(other), Value<T>(target));
        return one.Dimension.Key switch
        {
            "generalHardness" => Of<GeneralHardness>(),
            "carbonateHardness" => Of<CarbonateHardness>(),
            "conductivity" => Of<Conductivity>(),
            "concentration" => Of<Concentration>(),
            "salinity" => Of<Salinity>(),
            _ => Of<Temperature>(),
        };
    }

    private static T Value<T>(StatedRange stated)
        where T : struct, IQuantity<T> => stated.As<T>().Max!.Value;

    private static Unit UnitOf(string typed) => QuantityText.Parse(typed, DimensionCatalogue.Volume).Value.Unit;
}
