using System.ComponentModel;
using CareSheets.Quantities;
using CareSheets.Water;
using Spectre.Console.Cli;

namespace CareSheets.Commands.Waters;

internal sealed class AmmoniaSettings : ContentSettings
{
    [CommandOption("--ph <PH>")]
    [Description("pH of the water.")]
    public string? PH { get; init; }

    [CommandOption("--temperature <FIGURE>")]
    [Description("Temperature of the water, as in 25C or 77F.")]
    public string? Temperature { get; init; }

    [CommandOption("--total <FIGURE>")]
    [Description("Ammonia in all with its basis, as in \"2 mg/L as N\" or \"2 mg/L NH3\".")]
    public string? Total { get; init; }
}

/// <summary>How much of the ammonia is un-ionised, beside the limits.</summary>
internal sealed class AmmoniaCommand : WaterCommand<AmmoniaSettings>
{
    protected override WaterAnswer? Answer(AmmoniaSettings settings, WaterDesk desk)
    {
        var pH = desk.Need<Acidity>("--ph", settings.PH, "The share of the harmful form depends on it.");
        var warmth = desk.Need<Temperature>(
            "--temperature", settings.Temperature, "The share of the harmful form depends on it.");
        var total = desk.Read<Ammonia>("--total", settings.Total);
        if (pH is null || warmth is null || desk.Bag.HasErrors)
            return null;
        var share = desk.Accept(UnionisedAmmonia.ShareAt(pH.Value, warmth.Value));
        if (desk.Bag.HasErrors)
            return null;
        Ammonia? unionised = total is null ? null : total.Value * share.InParts;
        return new WaterAnswer(desk.Lines.Ammonia(total, pH, warmth, share), new
        {
            share = share.InParts,
            unionisedAsN = unionised?.InMilligramsOfNitrogen,
            unionisedAsNH3 = unionised?.InMilligramsOfAmmonia,
            limitAsNH3 = desk.Limits.UnionisedAmmonia.Value.InMilligramsOfAmmonia,
            limitSource = desk.Limits.UnionisedAmmonia.Source,
            harmAsNH3 = desk.Limits.HarmfulAmmonia.Value.InMilligramsOfAmmonia,
            harmSource = desk.Limits.HarmfulAmmonia.Source,
        });
    }
}
