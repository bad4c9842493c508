using System.ComponentModel;
using CareSheets.Quantities;
using CareSheets.Water;
using Spectre.Console.Cli;

namespace CareSheets.Commands.Waters;

internal sealed class CarbonDioxideSettings : ContentSettings
{
    [CommandOption("--ph <PH>")]
    [Description("pH of the water.")]
    public string? PH { get; init; }

    [CommandOption("--kh <FIGURE>")]
    [Description("Carbonate hardness (alkalinity), as in 4dKH or \"70 ppm CaCO3\".")]
    public string? Alkalinity { get; init; }

    [CommandOption("--temperature <FIGURE>")]
    [Description("Temperature of the water, as in 25C or 77F.")]
    public string? Temperature { get; init; }
}

/// <summary>CO₂ from alkalinity and pH, and the pH when it has left.</summary>
internal sealed class CarbonDioxideCommand : WaterCommand<CarbonDioxideSettings>
{
    protected override WaterAnswer? Answer(CarbonDioxideSettings settings, WaterDesk desk)
    {
        var pH = desk.Need<Acidity>("--ph", settings.PH);
        var kh = desk.Need<CarbonateHardness>(
            "--kh", settings.Alkalinity, "pH alone says nothing of CO₂; it takes the alkalinity too.");
        var warmth = desk.Need<Temperature>("--temperature", settings.Temperature);
        if (pH is null || kh is null || warmth is null)
            return null;
        var water = desk.Accept(MeasuredGas.In(kh.Value, pH.Value, warmth.Value));
        if (water is null || desk.Accept(CarbonateWater.Aired(kh.Value, warmth.Value)) is not { } aired)
            return null;
        return new WaterAnswer(desk.Lines.Gas(water, aired), new
        {
            carbonDioxide = water.CarbonDioxide.InMilligramsPerLitre,
            airedPH = aired.PH.InPH,
            airedCarbonDioxide = aired.CarbonDioxide.InMilligramsPerLitre,
        });
    }
}
