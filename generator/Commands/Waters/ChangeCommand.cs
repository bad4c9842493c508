using System.ComponentModel;
using System.Globalization;
using CareSheets.Diagnostics;
using CareSheets.Pages.Waters;
using CareSheets.Quantities;
using CareSheets.Water;
using Spectre.Console;
using Spectre.Console.Cli;

namespace CareSheets.Commands.Waters;

internal sealed class ChangeSettings : ContentSettings
{
    [CommandArgument(0, "<tank>")]
    [Description("What the tank has, as in \"40 mg/L\" of nitrate, \"18 °dH\" or \"600 µS/cm\".")]
    public string Tank { get; init; } = "";

    [CommandArgument(1, "<fresh>")]
    [Description("What the fresh water has, in any unit of the same.")]
    public string Fresh { get; init; } = "";

    [CommandOption("--replaced <SHARE>")]
    [Description("How much each change replaces, as in 25%.")]
    public string? Replaced { get; init; }

    [CommandOption("--times <COUNT>")]
    [Description("How many changes.")]
    public string? Times { get; init; }

    [CommandOption("--target <FIGURE>")]
    [Description("Instead: what the tank should come to.")]
    public string? Target { get; init; }

    /// <summary>Nothing where it was not given, or is no whole number that can be meant.</summary>
    public int? Count =>
        int.TryParse(Times, NumberStyles.None, CultureInfo.InvariantCulture, out var count) &&
        count is >= 1 and <= WaterChange.Most ? count : null;

    public override ValidationResult Validate() =>
        base.Validate() is { Successful: false } wrong ? wrong
        : Times is null == Target is null ? ValidationResult.Error("Give --times or --target, one of the two.")
        : Times is not null && Count is null
            ? ValidationResult.Error($"--times can't be “{Times}”: write a whole number from 1 to {WaterChange.Most}.")
        : ValidationResult.Success();
}

/// <summary>A tank after the same water change again and again, or how many changes a target takes.</summary>
internal sealed class ChangeCommand : WaterCommand<ChangeSettings>
{
    protected override WaterAnswer? Answer(ChangeSettings settings, WaterDesk desk)
    {
        var replaced = desk.Need<Share>("--replaced", settings.Replaced);
        string[] typed = [settings.Tank, settings.Fresh, .. settings.Target is { } target ? new[] { target } : []];
        var common = Proportional.Common(typed) ?? DimensionCatalogue.Concentration;
        if (common == DimensionCatalogue.Acidity)
            desk.Bag.Add(WaterCodes.AcidityDoesNotBlend, SourceSpan.None);
        if (desk.Bag.HasErrors || replaced is null)
            return null;
        var answer = common.Key switch
        {
            "generalHardness" => Of<GeneralHardness>(settings, desk, replaced),
            "carbonateHardness" => Of<CarbonateHardness>(settings, desk, replaced),
            "conductivity" => Of<Conductivity>(settings, desk, replaced),
            "salinity" => Of<Salinity>(settings, desk, replaced),
            "temperature" => Of<Temperature>(settings, desk, replaced),
            _ => Of<Concentration>(settings, desk, replaced),
        };
        return answer is null ? null : answer with { Lines = [.. answer.Lines, desk.Text.Say("fresh_caution")] };
    }

    private static WaterAnswer? Of<T>(ChangeSettings settings, WaterDesk desk, Given<Share> replaced)
        where T : struct, IQuantity<T>
    {
        var stated = desk.Read("tank", settings.Tank, T.Dimension);
        var fresh = desk.Read<T>("fresh", settings.Fresh);
        if (stated is null || fresh is null)
            return null;
        var tank = GivenFigure.From<T>(stated);
        if (settings.Count is { } times)
        {
            var after = desk.Accept(WaterChange.After(tank.Value, fresh.Value, replaced.Value, times));
            return desk.Bag.HasErrors ? null : new WaterAnswer(
                desk.Lines.Changed(times, replaced.Text, WaterText.Show(after.Canonical, stated.Unit)),
                new { times, after = after.Canonical, unit = T.Dimension.Canonical.Key });
        }
        if (desk.Read<T>("--target", settings.Target) is not { } target)
            return null;
        var until = desk.Accept(WaterChange.Until(tank.Value, fresh.Value, replaced.Value, target.Value), stated.Unit);
        return desk.Bag.HasErrors
            ? null
            : new WaterAnswer(desk.Lines.Reached(until, replaced.Text, target.Text), new { times = until });
    }
}
