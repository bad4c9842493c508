using CareSheets.Tests.Support;
using Microsoft.Playwright;

namespace CareSheets.Tests.Browser;

/// <summary>The field that finds species by typing, and the same page without scripts.</summary>
[Collection(BrowserTests.Name)]
public sealed class FilterTests(BrowserFixture browser)
{
    private static readonly int All = RealSite.Entries.Count;

    [Fact]
    public async Task Typing_leaves_the_species_that_fit_and_says_how_many()
    {
        var page = await OpenAsync(scripts: true);
        Assert.Equal(All, await VisibleAsync(page));
        Assert.Equal($"{All} species shown", await CountAsync(page));

        await page.Locator("#filter-text").PressSequentiallyAsync("danio");
        var fits = RealSite.Pages["species/index.html"].QuerySelectorAll("tr[data-search]")
            .Count(row => row.GetAttribute("data-search")!.Contains("danio", StringComparison.Ordinal));
        Assert.InRange(fits, 1, All - 1);
        Assert.Equal(fits, await VisibleAsync(page));
        Assert.Equal($"{fits} species shown", await CountAsync(page));
        Assert.Equal("polite", await page.Locator(".filter__count").GetAttributeAsync("aria-live"));
    }

    [Theory]
    [InlineData("rerio", 1)]
    [InlineData("  DANIO   Rerio ", 1)]
    [InlineData("rerio danio", 1)]
    [InlineData("brachydanio frankei", 1)] // a former name
    [InlineData("no such fish at all", 0)]
    [InlineData("<script>", 0)]
    [InlineData("(.*", 0)]
    public async Task Words_in_any_order_and_case_find_a_species_by_all_its_names(string typed, int shown)
    {
        var page = await OpenAsync(scripts: true);
        await page.Locator("#filter-text").FillAsync(typed);
        Assert.Equal(shown, await VisibleAsync(page));
        Assert.Equal($"{shown} species shown", await CountAsync(page));
        await page.Locator("#filter-text").FillAsync("");
        Assert.Equal(All, await VisibleAsync(page));
    }

    [Fact]
    public async Task Without_scripts_all_species_are_there_and_no_dead_field()
    {
        var page = await OpenAsync(scripts: false);
        Assert.Equal(All, await VisibleAsync(page));
        Assert.False(await page.Locator("#filter-text").IsVisibleAsync());
    }

    [Fact]
    public async Task The_field_has_a_label_that_a_screen_reader_finds()
    {
        var page = await OpenAsync(scripts: true);
        var field = page.GetByRole(AriaRole.Searchbox, new() { NameRegex = new("^Find a species") });
        Assert.Equal(1, await field.CountAsync());
    }

    private async Task<IPage> OpenAsync(bool scripts)
    {
        var page = await browser.OpenAsync(390, 844, scripts: scripts);
        await page.GotoAsync(browser.Site + "species/index.html");
        return page;
    }

    private static Task<int> VisibleAsync(IPage page) => page.Locator(".species-table__row:visible").CountAsync();

    private static async Task<string> CountAsync(IPage page) =>
        (await page.Locator(".filter__count").InnerTextAsync()).Trim();
}
