using CareSheets.Tests.Support;

namespace CareSheets.Tests.Browser;

/// <summary>Tables that are scrolled sideways: what explains them, and what a row is about, stay in sight.</summary>
[Collection(BrowserTests.Name)]
public sealed class FigureGridTests(BrowserFixture browser)
{
    [Theory]
    [InlineData("how-well.html", 320)]
    [InlineData("how-well.html", 390)]
    [InlineData("water.html", 320)]
    [InlineData("water.html", 390)]
    public async Task Captions_and_first_columns_are_whole_wherever_the_table_is_scrolled(string address, int width)
    {
        var page = await browser.OpenAsync(width, 844);
        await page.GotoAsync(browser.Site + address);
        var cut = await page.EvaluateAsync<string[]>("""
            [...document.querySelectorAll('details')].forEach(d => d.open = true);
            [...document.querySelectorAll('.record__scroll')].flatMap(scroll => {
                scroll.scrollLeft = 1000;
                const box = scroll.getBoundingClientRect();
                return [...scroll.querySelectorAll('caption, tbody th')].filter(e => {
                    const range = document.createRange(); range.selectNodeContents(e);
                    return [...range.getClientRects()].some(r => r.left < box.left - 1 || r.right > box.right + 1);
                }).map(e => e.textContent);
            })
            """);
        Assert.Empty(cut);
        Assert.True(await page.Locator(".record__scroll").CountAsync() >= 4);
    }

    /// <summary>On the narrowest phone no table of the record has to be scrolled at all.</summary>
    [Fact]
    public async Task The_record_fits_the_narrowest_phone()
    {
        var page = await browser.OpenAsync(320, 844);
        await page.GotoAsync(browser.Site + "how-well.html");
        Assert.Equal(0, await page.EvaluateAsync<int>("""
            [...document.querySelectorAll('details')].forEach(d => d.open = true);
            [...document.querySelectorAll('.record__scroll')].filter(s => s.scrollWidth > s.clientWidth + 1).length
            """));
    }
}
