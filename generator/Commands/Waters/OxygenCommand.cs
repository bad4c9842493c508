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
        if (settings.Pressure is not null)
            return warmth is not null && desk.Read<Pressure>("--pressure", settings.Pressure) is { } pressure
                ? Told(desk, OxygenSaturation.At(warmth.Value, pressure.Value), warmth, pressure.Text, pressure.Value)
                : null;
        var altitude = settings.Altitude is null ? Here(desk) : desk.Read<Altitude>("--altitude", settings.Altitude);
        if (warmth is null || altitude is null || desk.Bag.HasErrors)
            return null;
        var most = OxygenSaturation.At(warmth.Value, altitude.Value);
        return Told(
            desk, most, warmth, altitude.Text, StandardAtmosphere.At(altitude.Value), UnitOf(settings.Altitude));
    }

    /// <summary>In which a refused height is told; nothing for the shop's own.</summary>
    private static Unit? UnitOf(string? typed) =>
        typed is null ? null : QuantityText.Parse(typed, DimensionCatalogue.Altitude).Value.Unit;

    private static Given<Altitude> Here(WaterDesk desk)
    {
        var here = desk.Store?.Altitude ?? default;
        return new Given<Altitude>(here, WaterText.Show(here.InMetres, DimensionCatalogue.Altitude.Canonical));
    }

    private static WaterAnswer? Told(
        WaterDesk desk, SumResult<Concentration> most, Given<Temperature> warmth, string air, Pressure pressure,
        Unit? unit = null)
    {
        var oxygen = desk.Accept(most, most.Refusal?.Of == DimensionCatalogue.Altitude ? unit : null);
        return desk.Bag.HasErrors ? null : new WaterAnswer(
            desk.Lines.Oxygen(warmth.Text, air, oxygen),
            new { oxygen = oxygen.InMilligramsPerLitre, kilopascals = pressure.InKilopascals });
    }
}
