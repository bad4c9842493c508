using System.ComponentModel;
using CareSheets.Pages.Waters;
using CareSheets.Quantities;
using CareSheets.Water.Bags;
using Spectre.Console;
using Spectre.Console.Cli;

namespace CareSheets.Commands.Waters;

internal sealed class BagSettings : ContentSettings
{
    [CommandOption("--temperature <FIGURE>")]
    [Description("Temperature of the bag, as in 22C.")]
    public string? Temperature { get; init; }

    [CommandOption("--ph <PH>")]
    [Description("pH of the bag.")]
    public string? PH { get; init; }

    [CommandOption("--ammonia <FIGURE>")]
    [Description("Ammonia in all with its basis, as in \"8 mg/L as N\".")]
    public string? Ammonia { get; init; }

    [CommandOption("--kh <FIGURE>")]
    [Description("Carbonate hardness of the bag, as in 3dKH.")]
    public string? Alkalinity { get; init; }

    [CommandOption("--hours <TIME>")]
    [Description("How long it was under way, as in \"26 h\".")]
    public string? Hours { get; init; }

    [CommandOption("--into <WATER>")]
    [Description("Where the fishes go: a system of the shop by its name, or \"pH 7.9, 12 °dKH, 25 °C\".")]
    public string? Into { get; init; }

    public override ValidationResult Validate() =>
        base.Validate() is { Successful: false } wrong ? wrong
        : Into is null ? ValidationResult.Error("Name the water that receives the fishes: --into \"Soft water\".")
        : ValidationResult.Success();
}

/// <summary>How to open a transport bag, by its ammonia closed, aired and mixed.</summary>
internal sealed class BagCommand : WaterCommand<BagSettings>
{
    protected override WaterAnswer? Answer(BagSettings settings, WaterDesk desk)
    {
        var warmth = desk.Need<Temperature>("--temperature", settings.Temperature);
        var tank = WaterDescription.ReadTank(desk, "--into", settings.Into!);
        if (warmth is null)
            return null;
        var reading = new BagReading(warmth.Value)
        {
            PH = desk.Read<Acidity>("--ph", settings.PH)?.Value,
            Ammonia = desk.Read<Ammonia>("--ammonia", settings.Ammonia)?.Value,
            Alkalinity = desk.Read<CarbonateHardness>("--kh", settings.Alkalinity)?.Value,
            UnderWay = desk.Read<Elapsed>("--hours", settings.Hours)?.Value,
        };
        if (tank is null || desk.Bag.HasErrors)
            return null;
        return desk.Accept(BagCheck.Judge(reading, tank, desk.Limits)) is { } outcome
            ? new WaterAnswer(new BagLines(desk.Text).All(outcome), Figures(outcome))
            : null;
    }

    private static object Figures(BagOutcome outcome) => new
    {
        advice = outcome.Advice.ToString(),
        reason = outcome.Reason.ToString(),
        cautions = outcome.Cautions.Select(c => c.ToString()),
        unionisedNow = Span(outcome.Now),
        airedPH = Span<Acidity>(outcome.AiredPH),
        unionisedAired = Span(outcome.Aired),
        steps = outcome.Steps.Select(s => new
        {
            volumes = s.Volumes,
            ph = Span<Acidity>(s.PH),
            unionised = Span(s.Unionised),
        }),
        largestTotal = outcome.LargestTotal.InMilligramsOfNitrogen,
        rise = outcome.Rise?.InPH,
        minutesAfloat = outcome.Afloat?.InMinutes,
        ammoniaBasis = "mg/L as N",
    };

    private static double[]? Span<T>(Range<T>? range)
        where T : struct, IQuantity<T> =>
        range is { } known ? [known.Min!.Value.Canonical, known.Max!.Value.Canonical] : null;
}
