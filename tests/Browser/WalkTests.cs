using System.Globalization;
using Microsoft.Playwright;

namespace CareSheets.Tests.Browser;

/// <summary>A visitor's way from the first page to the paper in hand, on a phone and on a desk.</summary>
[Collection(BrowserTests.Name)]
public sealed class WalkTests(BrowserFixture browser)
{
    [Theory]
    [InlineData(390, 844)]
    [InlineData(1280, 900)]
    public async Task From_home_to_a_home_sheet_by_clicking(int width, int height)
    {
        var page = await browser.OpenAsync(width, height);
        var trouble = Watch(page, browser.Site);
        await page.GotoAsync(browser.Site + "index.html");
        await page.GetByRole(AriaRole.Navigation).GetByRole(AriaRole.Link, new() { Name = "All species" }).ClickAsync();
        await page.WaitForURLAsync("**/species/index.html", new() { WaitUntil = WaitUntilState.Commit });
        await page.Locator(".species-table a[href$='danio-rerio.html']").ClickAsync();
        await page.WaitForURLAsync("**/species/danio-rerio.html", new() { WaitUntil = WaitUntilState.Commit });
        Assert.Equal("zebra danio", await page.Locator("h1").TextContentAsync());
        Assert.False(await ScrollsSidewaysAsync(page));
        await page.GetByRole(AriaRole.Link, new() { Name = "Home sheet", Exact = true }).ClickAsync();
        await page.WaitForURLAsync("**/papers/sheet-danio-rerio.html", new() { WaitUntil = WaitUntilState.Commit });
        Assert.True(await page.Locator(".home-sheet h1").IsVisibleAsync());
        await page.GetByRole(AriaRole.Link, new() { Name = "Back to the page" }).ClickAsync();
        await page.WaitForURLAsync("**/species/danio-rerio.html", new() { WaitUntil = WaitUntilState.Commit });
        Assert.Empty(trouble);
    }

    [Theory]
    [MemberData(nameof(PageKinds.Data), MemberType = typeof(PageKinds))]
    public async Task No_page_scrolls_sideways_or_complains(string address)
    {
        var page = await browser.OpenAsync(320, 640);
        var trouble = Watch(page, browser.Site);
        await page.GotoAsync(browser.Site + address);
        foreach (var width in new[] { 320, 390, 1280 })
        {
            await page.SetViewportSizeAsync(width, 800);
            if (await ScrollsSidewaysAsync(page))
                trouble.Add($"at {width} px it scrolls sideways, for {await WidestAsync(page)}");
        }
        Assert.Empty(trouble);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_watch_notices_an_error_a_missing_file_and_another_host()
    {
        var page = await browser.OpenAsync();
        var trouble = Watch(page, browser.Site);
        await page.GotoAsync(browser.Site + "index.html");
        await page.EvaluateAsync("console.error('x')");
        await page.EvaluateAsync("document.body.style.minWidth = '5000px'");
        Assert.True(await ScrollsSidewaysAsync(page));
        await Assert.ThrowsAsync<PlaywrightException>(() => page.GotoAsync(browser.Site + "nothing.html"));
        await Assert.ThrowsAsync<PlaywrightException>(() => page.GotoAsync("http://127.0.0.1:9/"));
        Assert.Contains("error: x", trouble);
        Assert.Contains($"404: {browser.Site}nothing.html", trouble);
        Assert.Contains("another host: http://127.0.0.1:9/", trouble);
    }

    /// <summary>Collects whatever a page should not do, from now on.</summary>
    internal static List<string> Watch(IPage page, string site)
    {
        var trouble = new List<string>();
        page.Console += (_, said) =>
        {
            if (said.Type is "error" or "warning")
                trouble.Add($"{said.Type}: {said.Text}");
        };
        page.PageError += (_, error) => trouble.Add($"script: {error}");
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(site, StringComparison.Ordinal))
                trouble.Add($"another host: {request.Url}");
        };
        page.Response += (_, response) =>
        {
            if (response.Status >= 400)
                trouble.Add(string.Create(CultureInfo.InvariantCulture, $"{response.Status}: {response.Url}"));
        };
        return trouble;
    }

    private static Task<bool> ScrollsSidewaysAsync(IPage page) => page.EvaluateAsync<bool>(
        "document.documentElement.scrollWidth > document.documentElement.clientWidth");

    private static Task<string> WidestAsync(IPage page) => page.EvaluateAsync<string>("""
        [...document.body.querySelectorAll('*')].map(e => [e.getBoundingClientRect().right, e])
            .sort((a, b) => b[0] - a[0]).slice(0, 3).map(([r, e]) => `${e.tagName}.${e.className} ${r}`).join('; ')
        """);
}
