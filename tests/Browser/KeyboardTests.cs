using Microsoft.Playwright;

namespace CareSheets.Tests.Browser;

/// <summary>Everything can be reached and seen with the keyboard alone.</summary>
[Collection(BrowserTests.Name)]
public sealed class KeyboardTests(BrowserFixture browser)
{
    private const string Focused = """
        () => {
            const e = document.activeElement, s = getComputedStyle(e), r = e.getBoundingClientRect();
            const seen = s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2 && r.width > 0 && r.height > 0
                && r.bottom > 0 && r.top < innerHeight && s.clipPath === 'none';
            return [e.className, seen ? 'seen' : 'unseen', e.closest('main') ? 'main' : 'outside',
                e.tagName, e.textContent.trim().slice(0, 40)];
        }
        """;

    [Fact]
    public async Task The_first_stop_is_the_link_to_the_content_and_it_shows_itself()
    {
        var page = await OpenAsync("species/danio-rerio.html");
        var before = await page.EvaluateAsync<string>(
            "getComputedStyle(document.querySelector('.skip-link')).clipPath");
        Assert.NotEqual("none", before);
        await page.Keyboard.PressAsync("Tab");
        Assert.Equal(["skip-link", "seen"], (await page.EvaluateAsync<string[]>(Focused))[..2]);

        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync("**/species/danio-rerio.html#content");
        await page.Keyboard.PressAsync("Tab");
        Assert.Equal("main", (await page.EvaluateAsync<string[]>(Focused))[2]);
    }

    [Theory]
    [InlineData("index.html")]
    [InlineData("species/index.html")]
    [InlineData("species/danio-rerio.html")]
    [InlineData("papers/index.html")]
    [InlineData("papers/sheet-danio-rerio.html")]
    public async Task Every_stop_of_a_walk_with_Tab_is_seen_and_the_walk_reaches_the_content(string address)
    {
        var page = await OpenAsync(address);
        var stops = new List<string[]>();
        for (var i = 0; i < 20; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            var stop = await page.EvaluateAsync<string[]>(Focused);
            if (stop[3] == "BODY")
                break; // past the last link
            stops.Add(stop);
        }
        Assert.NotEmpty(stops);
        Assert.All(stops, stop => Assert.True(stop[1] == "seen", string.Join(' ', stop)));
        Assert.True(address.StartsWith("papers/sheet", StringComparison.Ordinal) || stops.Exists(s => s[2] == "main"));
    }

    [Fact]
    public async Task A_link_without_focus_has_no_outline()
    {
        var page = await OpenAsync("index.html");
        Assert.Equal("none", await page.EvaluateAsync<string>(
            "getComputedStyle(document.querySelector('main a')).outlineStyle"));
    }

    [Fact]
    public async Task With_the_colours_of_the_reader_the_bars_are_still_there()
    {
        var page = await OpenAsync("species/danio-rerio.html");
        await page.EmulateMediaAsync(new() { ForcedColors = ForcedColors.Active });
        var (fill, back) = (
            await page.EvaluateAsync<string>("getComputedStyle(document.querySelector('.range-bar__keep')).fill"),
            await page.EvaluateAsync<string>("getComputedStyle(document.body).backgroundColor"));
        Assert.NotEqual(back, fill);
    }

    private async Task<IPage> OpenAsync(string address)
    {
        var page = await browser.OpenAsync();
        await page.GotoAsync(browser.Site + address);
        return page;
    }
}
