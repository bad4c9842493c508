using System.ComponentModel;
using CareSheets.Pages.Waters;
using CareSheets.Quantities;
using CareSheets.Water;
using Spectre.Console;
using Spectre.Console.Cli;

namespace CareSheets.Commands.Waters;

internal sealed class FloatSettings : ContentSettings
{
    [CommandOption("--bag <FIGURE>")]
    [Description("Temperature of the sealed bag, as in 20C.")]
    public string? BagTemperature { get; init; }

    [CommandOption("--tank <FIGURE>")]
    [Description("Temperature of the tank.")]
    public string? Tank { get; init; }

    [CommandOption("--after <TIME>")]
    [Description("Time afloat, as in \"20 min\".")]
    public string? After { get; init; }

    [CommandOption("--then <FIGURE>")]
    [Description("With --after: what the bag had then, which gives your bag's own time.")]
    public string? Then { get; init; }

    public override ValidationResult Validate() =>
        base.Validate() is { Successful: false } wrong ? wrong
        : Then is not null && After is null ? ValidationResult.Error("--then needs --after, the time between.")
        : ValidationResult.Success();
}

/// <summary>A sealed bag afloat: how warm, how long, and what two readings say of the bag.</summary>
internal sealed class FloatCommand : WaterCommand<FloatSettings>
{
    protected override WaterAnswer? Answer(FloatSettings settings, WaterDesk desk)
    {
        var bag = desk.Need<Temperature>("--bag", settings.BagTemperature);
        var tank = desk.Need<Temperature>("--tank", settings.Tank);
        var afloat = desk.Read<Elapsed>("--after", settings.After);
        var then = desk.Read<Temperature>("--then", settings.Then);
        if (bag is null || tank is null || desk.Bag.HasErrors)
            return null;
        var constant = then is null || afloat is null
            ? desk.Limits.FloatTime.Value
            : desk.Accept(FloatedBag.TimeConstant(bag.Value, then.Value, tank.Value, afloat.Value));
        if (desk.Bag.HasErrors)
            return null;
        var left = desk.Limits.TemperatureStep.Value;
        var until = desk.Accept(FloatedBag.Until(bag.Value, tank.Value, left, constant));
        var warmth = afloat is null
            ? (Temperature?)null : FloatedBag.After(bag.Value, tank.Value, afloat.Value, constant);
        return new WaterAnswer([.. Lines(desk, then, afloat, warmth, tank.Value, until, constant)], new
        {
            timeConstantMinutes = constant.InMinutes,
            minutes = until.InMinutes,
            left = left.InKelvins,
            celsius = warmth?.InCelsius,
        });
    }

    private static IEnumerable<string> Lines(
        WaterDesk desk, Given<Temperature>? then, Given<Elapsed>? afloat, Temperature? warmth, Temperature tank,
        Elapsed until, Elapsed constant)
    {
        var limit = Digits.Fixed(desk.Limits.TemperatureStep.Value.InKelvins, 1);
        if (then is not null)
            yield return desk.Text.Say("float_constant", ("minutes", Digits.Of(constant.InMinutes)));
        else if (warmth is { } after)
            yield return desk.Text.Say(
                "floated", ("time", afloat!.Text),
                ("temperature", WaterText.Show(after.InCelsius, DimensionCatalogue.Temperature.Canonical)),
                ("left", Digits.Of(Math.Abs((after - tank).InKelvins))));
        yield return until == default
            ? desk.Text.Say("float_none", ("left", limit))
            : desk.Text.Say("float_until", ("minutes", Digits.Of(Math.Ceiling(until.InMinutes))), ("left", limit));
    }
}
