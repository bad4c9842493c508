using CareSheets.Tests.Support;

namespace CareSheets.Tests.Browser;

/// <summary>The field on the first page leads to the list of all species, also without scripts or a server.</summary>
[Collection(BrowserTests.Name)]
public sealed class HomePageWalkTests(BrowserFixture browser)
{
    [Theory]
    [InlineData(true, false)]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public async Task What_is_typed_at_home_is_found_in_the_list(bool scripts, bool fromDisk)
    {
        var root = fromDisk ? new Uri(RealSite.Folder + "/").AbsoluteUri : browser.Site;
        var page = await browser.OpenAsync(390, 844, scripts: scripts);
        await page.GotoAsync(root + "index.html");
        await page.Locator("#find").FillAsync("puffers");
        await page.Locator("#find").PressAsync("Enter");
        await page.WaitForURLAsync("**/species/index.html?find=puffers");
        var shown = await page.Locator(".species-table__row:visible").CountAsync();
        if (scripts)
        {
            Assert.Equal("puffers", await page.Locator("#filter-text").InputValueAsync());
            Assert.Equal(
                RealSite.Pages["families/tetraodontidae.html"].QuerySelectorAll(".species-table__row").Length, shown);
        }
        else
        {
            Assert.Equal(RealSite.Entries.Count, shown);
        }
    }

    [Theory]
    [InlineData(320)]
    [InlineData(390)]
    [InlineData(768)]
    [InlineData(1280)]
    public async Task Counts_stay_on_one_line_and_rows_stand_on_one_line(int width)
    {
        var page = await browser.OpenAsync(width, 900);
        await page.GotoAsync(browser.Site + "index.html");
        Assert.Equal(0, await page.EvaluateAsync<int>("""
            [...document.querySelectorAll('.counted-list__count')].filter(c => c.getClientRects().length !== 1
                || c.getBoundingClientRect().height > 1.6 * parseFloat(getComputedStyle(c).fontSize)).length
            """));
        // The first letters of a row's cells stand on one line: their text ends at the same height, within a pixel
        // and what smaller type hangs down less.
        Assert.True(await page.EvaluateAsync<double>("""
            Math.max(...[...document.querySelectorAll('.species-table__row')].map(row => {
                const bottoms = [...row.querySelectorAll('.species-table__link, td')].map(cell => {
                    const range = document.createRange(); range.selectNodeContents(cell);
                    return range.getClientRects()[0].bottom;
                });
                return Math.max(...bottoms) - Math.min(...bottoms);
            }))
            """) <= 2);
    }
}
