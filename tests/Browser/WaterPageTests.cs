using System.Collections.Concurrent;
using CareSheets.Pages.Waters;
using CareSheets.Tests.Support;
using CareSheets.Tests.Tankmates;
using Microsoft.Playwright;

namespace CareSheets.Tests.Browser;

/// <summary>The sums on the water page, opened from disk: the same lines as the program gives, on a grid.</summary>
[Collection(BrowserTests.Name)]
public sealed class WaterPageTests(BrowserFixture browser)
{
    /// <summary>Each case is a sum and its fields: a unit's dimension and key, and what was typed.</summary>
    private const string AllLines = """
        (cases) => cases.map(({ sum, fields }) => caresheetsWaterPage.answer(sum, Object.fromEntries(
          Object.entries(fields).map(([name, [dimension, key, typed]]) => [name,
            caresheetsWaterPage.read(dimension ? caresheetsWater.unit(dimension, key) : null, typed)]))).join("\n"))
        """;

    private static readonly WaterText Text = new(Shop.Site.Words);
    private static readonly SumLines Lines = new(Text, Shop.Collection.Store.WaterLimits);

    private readonly ConcurrentQueue<string> _complaints = new();

    [Fact]
    public async Task Every_sum_gives_the_lines_of_the_program_on_a_grid()
    {
        List<WaterCase> cases =
        [
            .. WaterGrid.Hardness(), .. WaterGrid.Blends(), .. WaterGrid.Changes(), .. WaterGrid.Ammonia(),
            .. WaterGrid.Oxygen(), .. WaterGrid.Gas(),
        ];
        Assert.True(cases.Count > 1500, $"{cases.Count}");
        await AssertSame(cases);
    }

    [Fact]
    public async Task The_bag_gives_the_lines_of_the_program_on_a_grid()
    {
        var cases = WaterGrid.Bags().ToList();
        Assert.True(cases.Count > 300, $"{cases.Count}");
        await AssertSame(cases);
    }

    [Fact]
    public async Task Somebody_types_and_reads_the_answer_and_what_is_no_figure_is_told()
    {
        var page = await Open();
        await page.FillAsync("#ammonia-ph", "8");
        await page.FillAsync("#ammonia-temperature", "75.2");
        await page.SelectOptionAsync("#ammonia-temperature-unit", "fahrenheit");
        await page.FillAsync("#ammonia-total", "1");
        var answer = page.Locator("#ammonia .sum__answer");
        Assert.Contains("0.061 mg/L as NH₃ (0.0502 as N)", await answer.InnerTextAsync(), StringComparison.Ordinal);
        (string, string)[] slips =
        [
            ("abc", "write a plain number"), ("NaN", "write a plain number"), ("<b>", "write a plain number"),
            ("7,5", "decimals have a point, so write 7.5."), ("1e3", "“1e3” has no unit that is known here"),
            ("-1", "−1 mg/L as N can't be (≥ 0 mg/L as N)"),
        ];
        foreach (var (wrong, told) in slips)
        {
            await page.FillAsync("#ammonia-total", wrong);
            Assert.StartsWith($"Ammonia in all: {told}", await answer.InnerTextAsync());
            Assert.Equal("true", await page.GetAttributeAsync("#ammonia-total", "aria-invalid"));
        }
        await page.FillAsync("#ammonia-total", "1 mg/L as NH3");
        Assert.Contains("0.0502 mg/L as NH₃", await answer.InnerTextAsync(), StringComparison.Ordinal);
        (string, string)[] impossible = [("change-replaced", "125"), ("oxygen-altitude", "45000"), ("bag-ph", "15")];
        foreach (var (field, none) in impossible)
        {
            await page.FillAsync($"#{field}", none);
            Assert.Equal("true", await page.GetAttributeAsync($"#{field}", "aria-invalid"));
        }
        await page.FillAsync("#ammonia-total", "");
        await page.FillAsync("#ammonia-ph", "");
        Assert.Equal("Still missing: pH.", await answer.InnerTextAsync());
        await page.FillAsync("#ammonia-temperature", "");
        Assert.True(await answer.IsHiddenAsync());
        Assert.Empty(_complaints);
    }

    [Fact]
    public async Task The_bag_gives_one_order_and_folds_what_lies_behind_it()
    {
        var page = await Open();
        var (answer, behind) = (page.Locator("#bag .sum__answer"), page.Locator("#bag .sum__behind"));
        await page.FillAsync("#bag-ph", "6.0");
        await page.FillAsync("#bag-tank-ph", "8.5");
        Assert.Equal("Still missing: Temperature of the bag.", await answer.InnerTextAsync());
        Assert.True(await behind.IsHiddenAsync());
        await page.FillAsync("#bag-temperature", "22 °C");
        Assert.StartsWith("Not into this tank yet: its pH is 2.5 above", await answer.InnerTextAsync());
        Assert.Equal(5, await answer.Locator("li").CountAsync());
        Assert.DoesNotContain("Float", await answer.InnerTextAsync(), StringComparison.Ordinal);
        Assert.True(await behind.IsVisibleAsync());
        Assert.DoesNotContain("Tank to bag", await behind.TextContentAsync(), StringComparison.Ordinal);
        await page.FillAsync("#bag-hours", "500");
        Assert.StartsWith("Under way: 500 h can't be (0–168 h)", await answer.InnerTextAsync());
        Assert.True(await behind.IsHiddenAsync());
        Assert.Empty(_complaints);
    }

    [Fact]
    public async Task Without_scripts_the_page_explains_and_shows_its_tables()
    {
        var page = await Open(scripts: false);
        Assert.Equal(0, await page.Locator("[data-sum]:visible").CountAsync());
        Assert.Equal(7, await page.Locator("section.sum h2 + p:visible").CountAsync());
        await page.Locator("#ammonia summary").ClickAsync();
        Assert.Contains("5.02", await page.Locator("#ammonia table").InnerTextAsync(), StringComparison.Ordinal);
        Assert.Equal(4, await page.Locator("section.sum table").CountAsync());
    }

    private async Task AssertSame(List<WaterCase> cases)
    {
        var page = await Open();
        var shown = await page.EvaluateAsync<string[]>(
            AllLines, cases.Select(c => new { sum = c.Sum, fields = c.Fields }).ToArray());
        var apart = cases.Zip(shown)
            .Select(pair =>
                (pair.First, Expected: string.Join('\n', pair.First.Lines(Lines, Text)), Shown: pair.Second))
            .Where(pair => pair.Expected != pair.Shown)
            .Select(pair => $"{pair.First.Sum} {string.Join(' ', pair.First.Fields.Values.Select(f => f[2]))}\n" +
                $"program: {pair.Expected}\npage:    {pair.Shown}")
            .ToList();
        Assert.True(apart.Count == 0, $"{apart.Count} of {cases.Count} differ:\n{string.Join("\n\n", apart.Take(3))}");
        Assert.Empty(_complaints);
    }

    private async Task<IPage> Open(bool scripts = true)
    {
        var page = await browser.OpenAsync(scripts: scripts);
        page.PageError += (_, error) => _complaints.Enqueue(error);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
                _complaints.Enqueue(message.Text);
        };
        await page.GotoAsync($"file://{RealSite.Folder}/water.html");
        return page;
    }
}
