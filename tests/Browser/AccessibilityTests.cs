using Microsoft.Playwright;

namespace CareSheets.Tests.Browser;

/// <summary>axe-core on one page of each kind, in light and dark; and that it would see a fault.</summary>
[Collection(BrowserTests.Name)]
public sealed class AccessibilityTests(BrowserFixture browser)
{
    [Theory]
    [MemberData(nameof(PageKinds.Data), MemberType = typeof(PageKinds))]
    public async Task A_page_of_each_kind_is_clean_in_light_and_dark_on_phone_and_desk(string address)
    {
        foreach (var (scheme, width) in new[] { (ColorScheme.Light, 390), (ColorScheme.Dark, 1280) })
        {
            var page = await browser.OpenAsync(width, 900, scheme);
            await page.GotoAsync(browser.Site + address);
            var found = await Axe.RunAsync(page);
            Assert.Empty(found.Violations.Select(v => $"{scheme}: {v}"));
            Assert.DoesNotContain(found.Undecided, u => u.StartsWith("color-contrast", StringComparison.Ordinal) &&
                !IsOfDrawing(u));
            var drawn = await page.EvaluateAsync<string[]>(DrawnColours);
            Assert.All(drawn, colours => Assert.Equal("rgb(0, 0, 0) on rgb(255, 255, 255)", colours));
            Assert.Equal(address.Contains("/card-", StringComparison.Ordinal), drawn.Length > 0);
            var figures = await page.EvaluateAsync<bool[]>(RulerFigures);
            Assert.All(figures, isAsQuietAsItsCaption => Assert.True(isAsQuietAsItsCaption));
            Assert.True(found.Passes >= 10, $"Only {found.Passes} rules had anything to look at.");
            await page.Context.CloseAsync();
        }
    }

    /// <summary>axe does not decide what stands behind text in a drawing; that is looked at here instead.</summary>
    private const string DrawnColours = """
        () => [...document.querySelectorAll('.leaf__sheet text, .leaf__sheet tspan')].map(e =>
            getComputedStyle(e).fill + ' on ' + getComputedStyle(e.closest('.leaf__sheet')).backgroundColor)
        """;

    /// <summary>The figures of a ruler have the colour of the caption under it, which axe does decide.</summary>
    private const string RulerFigures = """
        () => [...document.querySelectorAll('.size-picture text')].map(e =>
            getComputedStyle(e).fill ===
                getComputedStyle(e.closest('.size-picture').querySelector('figcaption')).color)
        """;

    private static bool IsOfDrawing(string undecided) =>
        undecided.StartsWith("color-contrast: text", StringComparison.Ordinal) ||
        undecided.StartsWith("color-contrast: tspan", StringComparison.Ordinal) ||
        undecided.Contains("> text[text-anchor", StringComparison.Ordinal);

    [Fact]
    public async Task The_scan_sees_low_contrast_a_missing_language_and_a_picture_without_words()
    {
        var page = await browser.OpenAsync();
        await page.GotoAsync(browser.Site + "species/danio-rerio.html");
        await page.EvaluateAsync("""
            document.querySelector('h1').style.color = '#cccccc';
            document.querySelector('svg[role=img]').removeAttribute('aria-label');
            document.documentElement.removeAttribute('lang');
            """);
        var rules = (await Axe.RunAsync(page)).Violations.Select(v => v.Split(':')[0]).Distinct();
        Assert.Equal(["color-contrast", "html-has-lang", "svg-img-alt"], rules.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Dark_is_dark_and_paper_stays_white()
    {
        var dark = await browser.OpenAsync(scheme: ColorScheme.Dark);
        await dark.GotoAsync(browser.Site + "index.html");
        Assert.Equal("rgb(15, 26, 31)", await BackgroundAsync(dark, "body"));
        await dark.GotoAsync(browser.Site + "papers/sheet-danio-rerio.html");
        Assert.Equal("rgb(255, 255, 255)", await BackgroundAsync(dark, ".paper"));
        var light = await browser.OpenAsync();
        await light.GotoAsync(browser.Site + "index.html");
        Assert.Equal("rgb(244, 247, 247)", await BackgroundAsync(light, "body"));
    }

    private static Task<string> BackgroundAsync(IPage page, string selector) =>
        page.EvaluateAsync<string>("s => getComputedStyle(document.querySelector(s)).backgroundColor", selector);
}
