using CareSheets.Tests.Support;
using Xunit.Abstractions;

namespace CareSheets.Tests.Relatives;

/// <summary>
/// Slips planted into the real collection: what share is found, and how often a clean value is
/// called wrong. The figures are printed, for they are the record of how well this works.
/// </summary>
public sealed class PlantedSlipsTests(ITestOutputHelper output)
{
    private const double Ppm = 17.848;

    [Fact]
    public void Report()
    {
        PlantedSlips[] kinds =
        [
            new("Fahrenheit typed as Celsius", "temperature", (l, h, _) => (l * 1.8 + 32, h * 1.8 + 32)),
            new("Celsius typed as Fahrenheit", "temperature", (l, h, _) => ((l - 32) / 1.8, (h - 32) / 1.8)),
            new("centimetres typed as inches", "adult.length", (l, h, _) => (l * 2.54, h * 2.54)),
            new("inches typed as centimetres", "adult.length", (l, h, _) => (l / 2.54, h / 2.54)),
            new("standard for total length", "adult.length", (l, h, _) => (l / 1.2, h / 1.2)),
            new("ppm typed as degrees", "hardness", (l, h, _) => (l * Ppm, h * Ppm)),
            new("degrees typed as ppm", "hardness", (l, h, _) => (l / Ppm, h / Ppm)),
            new("decimal lost in pH", "ph", (l, h, _) => (l * 10, h * 10)),
            new("decimal lost in length", "adult.length", (l, h, _) => (l * 10, h * 10)),
            new("temperature shifted by 3 sd", "temperature", (l, h, sd) => (l + 3 * sd, h + 3 * sd)),
            new("pH shifted by 3 sd", "ph", (l, h, sd) => (l + 3 * sd, h + 3 * sd)),
        ];
        foreach (var kind in kinds)
        {
            for (var seed = 1; seed <= 5; seed++)
                kind.Run(seed);
            output.WriteLine(kind.ToString());
        }
        foreach (var fit in CareSheets.Relatives.RelativesEngine.Ask(RealContent.Collection).Fits)
            output.WriteLine($"{fit.Figure.Field}: saves {CareSheets.Relatives.RelativesEngine.Ask(RealContent.Collection).Others!.Savings[CareSheets.Relatives.RelativesEngine.Ask(RealContent.Collection).Fits.ToList().FindIndex(x => x.Figure == fit.Figure)]:0.00} sd by rank {string.Join(", ", fit.Middles.Fit!.Variances.Values.Select(v => Math.Round(Math.Sqrt(v), 3)))}");
    }
}
