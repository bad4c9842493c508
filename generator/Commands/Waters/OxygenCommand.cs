using System.ComponentModel;
using CareSheets.Pages.Waters;
using CareSheets.Quantities;
using CareSheets.Water;
using Spectre.Console;
using Spectre.Console.Cli;

namespace CareSheets.Commands.Waters;

internal sealed class OxygenSettings : ContentSettings
{
    [CommandOption("--temperature <FIGURE>")]
    [Description("Temperature of the water, as in 26C or 79F.")]
    public string? Temperature { get; init; }

    [CommandOption("--altitude <FIGURE>")]
    [Description("Height above the sea, as in 600m or 2000ft; without, that of the shop.")]
    public string? Altitude { get; init; }

    [CommandOption("--pressure <FIGURE>")]
    [Description("Instead: pressure of the air as a barometer there shows it, as in 740mmHg.")]
    public string? Pressure { get; init; }

    public override ValidationResult Validate() =>
        base.Validate() is { Successful: false } wrong ? wrong
        : Altitude is not null && Pressure is not null
            ? ValidationResult.Error("Give --altitude or --pressure, one of the two.")
            : ValidationResult.Success();
}

/// <summary>The most oxygen that fresh water takes from the air.</summary>
internal sealed class OxygenCommand : WaterCommand<OxygenSettings>
{
    protected override WaterAnswer? Answer(OxygenSettings settings, WaterDesk desk)
    {
        var warmth = desk.Need<Temperature>("--temperature", settings.Temperature);
        var (air, text) = Air(settings, desk);
        if (warmth is null || desk.Bag.HasErrors)
            return null;
        var oxygen = desk.Accept(OxygenSaturation.At(warmth.Value, air));
        return desk.Bag.HasErrors ? null : new WaterAnswer(
            desk.Lines.Oxygen(warmth.Text, text, oxygen),
            new { oxygen = oxygen.InMilligramsPerLitre, kilopascals = air.InKilopascals });
    }

    private static (Pressure Air, string Text) Air(OxygenSettings settings, WaterDesk desk)
    {
        if (desk.Read<Pressure>("--pressure", settings.Pressure) is { } pressure)
            return (pressure.Value, pressure.Text);
        if (desk.Read<Altitude>("--altitude", settings.Altitude) is { } altitude)
            return (StandardAtmosphere.At(altitude.Value), altitude.Text);
        var here = desk.Store?.Altitude ?? default;
        return (StandardAtmosphere.At(here), WaterText.Show(here.InMetres, DimensionCatalogue.Altitude.Canonical));
    }
}
