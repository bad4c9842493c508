using CareSheets.Diagnostics;
using CareSheets.Pages;
using CareSheets.Pages.Mates;
using CareSheets.Publishing;
using CareSheets.Rendering;
using CareSheets.Tankmates;
using Microsoft.Playwright;

namespace CareSheets.Bench.Tankmates;

/// <summary>
/// How long the page Together? takes from a choice to a laid-out answer, in Chromium, from disk. The
/// clock runs from the submit event until style and layout have been forced.
/// </summary>
internal static class PageSpeed
{
    private const string Measure = """
        (names) => names.map((name) => {
          document.querySelector("#ask-name").value = name;
          const start = performance.now();
          document.querySelector(".ask").requestSubmit();
          document.querySelector(".outcome").getBoundingClientRect();
          return performance.now() - start;
        })
        """;

    /// <summary>As long as it takes a person to type the first letter: what the page does when idle is done.</summary>
    private const string Idle = "() => new Promise((done) => setTimeout(() => requestIdleCallback(done), 300))";

    private const string MeasureFits = """
        () => ["60", "80", "100", "120"].map((side) => {
          const start = performance.now();
          for (const [id, value] of [["tank-width", "40"], ["tank-height", "40"], ["tank-length", side]])
            document.getElementById(id).value = value;
          document.querySelector(".ask").dispatchEvent(new Event("input"));
          document.querySelector(".outcome").getBoundingClientRect();
          return performance.now() - start;
        })
        """;

    public static async Task<bool> Run(string root, int count, double mostMilliseconds)
    {
        var folder = Directory.CreateTempSubdirectory("caresheets-bench-").FullName;
        var site = MadeUpCollection.Make(root, count);
        Write(root, folder, site);
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(
            new() { ExecutablePath = "/usr/bin/chromium", Args = ["--no-sandbox", "--disable-background-networking"] });
        var page = await browser.NewPageAsync();
        var names = site.Collection.Entries.Where((_, i) => i % 97 == 3).Take(8)
            .Select(e => e.VernacularName).ToArray();
        await page.GotoAsync($"file://{folder}/{Routes.Together}");
        await page.WaitForSelectorAsync(".ask:not([hidden])");
        await page.EvaluateAsync(Idle);
        var together = await page.EvaluateAsync<double[]>(Measure, names);
        await page.GotoAsync($"file://{folder}/{Routes.FitsMyTank}");
        await page.WaitForSelectorAsync(".ask:not([hidden])");
        var fits = await page.EvaluateAsync<double[]>(MeasureFits);
        Console.WriteLine(
            $"{count} species in Chromium, ms of {mostMilliseconds}: " +
            $"Together? {Show(together)}; Fits my tank {Show(fits)}");
        Directory.Delete(folder, recursive: true);
        return together.Concat(fits).Max() <= mostMilliseconds;
    }

    private static string Show(double[] times) => string.Join(" ", times.Select(t => $"{t:F0}"));

    private static void Write(string root, string folder, Site site)
    {
        var bag = new DiagnosticBag();
        var theme = Path.Combine(root, "themes", "riffle");
        var renderer = new PageRenderer(Theme.Read(theme, bag), site.Words);
        foreach (var page in new MatePageMaker(site).Make())
            File.WriteAllText(Path.Combine(folder, page.Address), renderer.Render(page, bag));
        foreach (var file in MateData.Make(site, Acquaintances.Of(site.Collection, (_, _) => null)))
            File.WriteAllText(Path.Combine(folder, file.Address), file.Text);
        foreach (var asset in ThemeAssets.Read(theme, bag))
            File.WriteAllBytes(Path.Combine(folder, asset.Address), asset.Bytes.ToArray());
    }
}
