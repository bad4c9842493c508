using System.ComponentModel;
using CareSheets.Pages.Waters;
using CareSheets.Quantities;
using CareSheets.Water;
using Spectre.Console.Cli;

namespace CareSheets.Commands.Waters;

internal sealed class HardnessSettings : ContentSettings
{
    [CommandArgument(0, "[figure]")]
    [Description("Hardness in any unit, as in \"8 °dH\", \"140 ppm CaCO3\" or \"4 °dKH\".")]
    public string? Figure { get; init; }

    [CommandOption("--calcium <FIGURE>")]
    [Description("Instead: calcium of a water report, as in \"40 mg/L\".")]
    public string? Calcium { get; init; }

    [CommandOption("--magnesium <FIGURE>")]
    [Description("Magnesium of that report.")]
    public string? Magnesium { get; init; }
}

/// <summary>A hardness in all units, and what schemes call it.</summary>
internal sealed class HardnessCommand : WaterCommand<HardnessSettings>
{
    protected override WaterAnswer? Answer(HardnessSettings settings, WaterDesk desk)
    {
        if (settings.Figure is { } figure && WaterDesk.Common(
            [figure], DimensionCatalogue.GeneralHardness, DimensionCatalogue.CarbonateHardness) ==
            DimensionCatalogue.CarbonateHardness)
            return Carbonate(desk.Read<CarbonateHardness>("hardness", figure)!, desk);
        return General(settings, desk) is { } hardness
            ? new WaterAnswer(desk.Lines.Hardness(hardness), new
            {
                generalHardness = Figures(GeneralHardness.Dimension, hardness.Value.Canonical),
                classes = HardnessScheme.All.Select(s => new
                {
                    scheme = s.Key,
                    source = s.Source,
                    word = s.ClassOf(hardness.Value).Word,
                }),
            })
            : null;
    }

    private static Given<GeneralHardness>? General(HardnessSettings settings, WaterDesk desk)
    {
        if (settings.Calcium is null && settings.Magnesium is null)
            return desk.Need<GeneralHardness>("hardness", settings.Figure);
        var calcium = desk.Need<Concentration>("--calcium", settings.Calcium);
        var magnesium = desk.Need<Concentration>("--magnesium", settings.Magnesium);
        return calcium is not null && magnesium is not null
            ? new Given<GeneralHardness>(
                Dissolved.HardnessOf(calcium.Value, magnesium.Value), $"{calcium.Text} Ca + {magnesium.Text} Mg")
            : null;
    }

    private static WaterAnswer Carbonate(Given<CarbonateHardness> hardness, WaterDesk desk) => new(
        [
            desk.Text.Say(
                "hardness_units", ("given", hardness.Text),
                ("list", string.Join(", ", CarbonateHardness.Dimension.Units
                    .Where(u => u.Key != "partPerMillion")
                    .Select(u => WaterText.Show(hardness.Value.Canonical, u)).Where(t => t != hardness.Text)))),
        ],
        new { carbonateHardness = Figures(CarbonateHardness.Dimension, hardness.Value.Canonical) });

    private static Dictionary<string, double> Figures(Dimension dimension, double canonical) =>
        dimension.Units.ToDictionary(u => u.Key, u => u.FromCanonical(canonical));
}
