using CareSheets.Tankmates;
using CareSheets.Tests.Browser;

namespace CareSheets.Tests.Tankmates;

/// <summary>What the page Fits my tank says beside its lists: each was asked alone, and what is lacking.</summary>
[Collection(BrowserTests.Name)]
public sealed class FitsPageTests(BrowserFixture browser)
{
    private readonly MatePages _pages = new(browser);

    [Fact]
    public async Task Each_species_tells_its_least_group_and_the_answer_that_each_was_asked_alone()
    {
        var page = await _pages.Open("fits-my-tank.html#tank=60x30x33cm&temperature=25%20%C2%B0C");
        var told = await page.InnerTextAsync(".outcome");
        Assert.Contains("Each species is compared by itself", told, StringComparison.Ordinal);
        Assert.EndsWith("together.html#tank=60x30x33cm", await page.GetAttributeAsync("#to-together", "href"));
        for (var list = 0; list < 4; list++)
        {
            if (await page.GetAttributeAsync($"#fit-{list}", "open") is null)
                await page.ClickAsync($"#fit-{list} summary");
        }
        await page.WaitForFunctionAsync(
            "count => document.querySelectorAll('.mate').length === count", Shop.Mates.Mates.Count);
        foreach (var mate in Shop.Mates.Mates)
        {
            var first = await page.Locator($".mate:has(a[href$='/{mate.Name}.html']) li").First.InnerTextAsync();
            Assert.Matches(@"^(At least \d+ of its kind|It can live alone|One, and no other|One only, for)", first);
            Assert.Equal(mate.Neighbours == Neighbours.None,
                first.EndsWith("it lives in a tank without other species.", StringComparison.Ordinal));
        }
        Assert.Equal([], _pages.Complaints);
    }

    [Fact]
    public async Task A_volume_alone_asks_for_the_length_and_with_it_something_fits()
    {
        var page = await _pages.Open("fits-my-tank.html");
        await page.FillAsync("#tank-volume", "112");
        Assert.StartsWith("Please give the length too.", await page.InnerTextAsync("#give-more"));
        Assert.Equal(["fit-2"], await OpenLists(page));
        Assert.Contains("Length of the tank", await page.InnerTextAsync("#not-asked"), StringComparison.Ordinal);
        await page.FillAsync("#tank-length", "80");
        Assert.Equal("", await page.InnerTextAsync("#give-more"));
        Assert.Equal(["fit-0"], await OpenLists(page));
        Assert.True(await page.Locator("#fit-0 .mate").CountAsync() > 3);
        Assert.EndsWith("#tank=80%20cm,112%20L", page.Url, StringComparison.Ordinal);
        await page.ReloadAsync();
        await page.WaitForSelectorAsync(".ask:not([hidden])");
        Assert.Equal("80", await page.InputValueAsync("#tank-length"));
        Assert.Equal("112", await page.InputValueAsync("#tank-volume"));
        Assert.Equal([], _pages.Complaints);
    }

    [Fact]
    public async Task A_length_alone_sorts_out_who_is_too_long_and_calls_nobody_fitting()
    {
        var page = await _pages.Open("fits-my-tank.html");
        await page.FillAsync("#tank-length", "60");
        Assert.StartsWith("Please give the volume too", await page.InnerTextAsync("#give-more"));
        Assert.Equal("Fits: 0 species", await page.InnerTextAsync("#fit-0 .verdict"));
        Assert.DoesNotContain(": 0 ", await page.InnerTextAsync("#fit-3 .verdict"), StringComparison.Ordinal);
        await page.FillAsync("#tank-width", "30");
        Assert.StartsWith("Width and height count only", await page.InnerTextAsync("#tank-message"));
        await page.FillAsync("#tank-height", "30");
        Assert.Equal("", await page.InnerTextAsync("#give-more") + await page.InnerTextAsync("#tank-message"));
    }

    [Fact]
    public async Task A_list_that_somebody_closed_stays_closed()
    {
        var page = await _pages.Open("fits-my-tank.html#tank=60x30x33cm");
        await page.ClickAsync("#fit-0 summary");
        await page.FillAsync("#water-ph", "7");
        Assert.Empty(await OpenLists(page));
    }

    private static Task<string[]> OpenLists(Microsoft.Playwright.IPage page) =>
        page.EvaluateAsync<string[]>("[...document.querySelectorAll('.outcome details[open]')].map((d) => d.id)");
}
