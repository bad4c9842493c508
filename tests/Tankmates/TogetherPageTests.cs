using CareSheets.Pages.Mates;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;
using CareSheets.Tests.Browser;
using Microsoft.Playwright;

namespace CareSheets.Tests.Tankmates;

/// <summary>What the page Together? says of a group: no recipe for foes, no yes that nobody gave.</summary>
[Collection(BrowserTests.Name)]
public sealed class TogetherPageTests(BrowserFixture browser)
{
    private const string Rooms = """
        (cases) => cases.map(({ places, litres }) => caresheetsTank.room(caresheetsNeeds, places,
          { figures: { volume: litres }, shown: { volume: `${litres} L` } }).weight)
        """;

    private readonly MatePages _pages = new(browser);

    [Fact]
    public async Task The_page_finds_room_for_a_group_where_the_program_does()
    {
        var count = Shop.Mates.Mates.Count;
        var cases = Enumerable.Range(0, 400).Select(i => (
            Places: Enumerable.Range(0, 1 + (i % 6)).Select(n => ((i * 7) + (n * 13)) % count).Distinct().ToArray(),
            Litres: 10.0 + (i * 2))).ToList();
        var expected = cases
            .Select(c => (int)RoomForAll.Of([.. c.Places.Select(p => Shop.Mates.Mates[p])], c.Litres).Fit).ToList();
        Assert.Equal([0, 2, 3], expected.Distinct().Order());
        var page = await _pages.Open("together.html");
        Assert.Equal(expected, await page.EvaluateAsync<int[]>(
            Rooms, cases.Select(c => new { places = c.Places, litres = c.Litres }).ToArray()));
    }

    [Theory]
    [InlineData("80x35x40cm", 8, "2")]
    [InlineData("80x35x40cm", 5, "2")]
    [InlineData("80x35x40cm", 2, "3")]
    [InlineData("80x35x40cm", 1, "0")]
    [InlineData("200x60x60cm", 8, "0")]
    [InlineData("112 L", 1, "3")]
    [InlineData("80 cm", 2, "3")]
    [InlineData("30 cm", 2, "2")]
    [InlineData("80 cm,112 L", 2, "3")]
    public async Task The_page_says_of_a_group_and_its_tank_what_the_program_says(string tank, int count, string sign)
    {
        string[] names = RoomForAllTests.Eight[..count];
        var group = RoomForAllTests.Of(tank, names);
        var sentences = new TankSentences(Shop.Site);
        var page = await _pages.Open(
            $"together.html#species={string.Join(',', names)}&tank={Uri.EscapeDataString(tank)}");
        var verdict = page.Locator("#tank-verdict");
        Assert.Equal(sentences.Verdict(group), await verdict.InnerTextAsync());
        Assert.Equal(sign, await verdict.GetAttributeAsync("data-verdict"));
        var lines = await page.Locator("#tank-reasons li").AllInnerTextsAsync();
        string[] expected =
            [.. sentences.Missing(group.Tank!), .. group.InTank.Select(_ => ""), .. sentences.Room(group)];
        Assert.Equal(expected.Length, lines.Count);
        Assert.All(expected.Zip(lines), l =>
            Assert.StartsWith(new string([.. l.First.TakeWhile(c => !char.IsAsciiDigit(c))]), l.Second));
        Assert.Equal([], _pages.Complaints);
    }

    [Theory]
    [InlineData("dichotomyctere-nigroviridis,paracheirodon-innesi", "Green spotted puffer + neon tetra")]
    [InlineData("betta-splendens,poecilia-reticulata", "Siamese fighting fish + guppy")]
    public async Task Those_to_be_kept_apart_get_no_recipe_but_are_asked_who_stays_out(string species, string pair)
    {
        var page = await _pages.Open($"together.html#species={species}&tank=200x80x80cm");
        Assert.Equal([pair], await page.Locator("#decide-pairs li").AllInnerTextsAsync());
        Assert.StartsWith("First decide", await page.InnerTextAsync("#decide"), StringComparison.Ordinal);
        Assert.False(await page.IsVisibleAsync("#life"));
        Assert.Equal("No tank fits them together, for they have to be kept apart.",
            await page.InnerTextAsync("#tank-verdict"));
        var told = await page.InnerTextAsync("main");
        Assert.All(
            ["fish in all", "The water they share", "Who could join", "What the tank must offer", "Swiss", "watch how"],
            words => Assert.DoesNotContain(words, told, StringComparison.OrdinalIgnoreCase));
        await page.ClickAsync(".chosen__drop >> nth=0");
        Assert.True(await page.IsVisibleAsync("#life"));
        Assert.False(await page.IsVisibleAsync("#decide-part"));
    }

    [Theory]
    [InlineData("together.html#species=danio-rerio", 390)]
    [InlineData("together.html#species=danio-rerio,paracheirodon-innesi&tank=60%20cm", 1280)]
    [InlineData("together.html#species=betta-splendens,poecilia-reticulata&tank=60%20L", 390)]
    [InlineData("fits-my-tank.html#tank=60%20L", 390)]
    public async Task What_is_hidden_is_not_shown_and_nothing_empty_is(string address, int width)
    {
        var page = await _pages.Open(address, width);
        Assert.Empty(await page.EvaluateAsync<string[]>("""
            [...document.querySelectorAll("main [hidden]")].filter((e) => e.getClientRects().length > 0)
              .map((e) => e.id)
            """));
        Assert.Empty(await page.EvaluateAsync<string[]>("""
            [...document.querySelectorAll(".outcome .verdict, .outcome .caution-list__item, .outcome h2")]
              .filter((e) => e.getClientRects().length > 0 && e.textContent.trim() === "").map((e) => e.id)
            """));
    }

    [Theory]
    [InlineData("pleco", "Which one do you mean by pleco?", " pleco", "")]
    [InlineData("a pleco", "Which one do you mean by a pleco?", " pleco", "")]
    [InlineData("plecostomus", "No species here is called plecostomus. Did you mean one of these?", " pleco", "")]
    [InlineData("neon tetrra", "No species here is called neon tetrra. Did you mean one of these?", "", "Neon tetra")]
    [InlineData("bala shark", "No species here is called bala shark. Ask us.", "none", "")]
    [InlineData("algae eater", "No species here is called algae eater. Ask us.", "none", "")]
    [InlineData("goldfish", "No species here is called goldfish. Ask us.", "none", "")]
    public async Task A_name_of_several_offers_all_and_none_that_is_something_else(
        string typed, string told, string kind, string one)
    {
        var page = await _pages.Open("together.html");
        await page.FillAsync("#ask-name", typed);
        await page.PressAsync("#ask-name", "Enter");
        Assert.Equal(told, await page.InnerTextAsync("#name-message"));
        var offers = await page.Locator("#choices button").AllInnerTextsAsync();
        var plecos = Shop.Collection.Entries
            .Where(e => e.VernacularNames.Take(typed == "plecostomus" ? 1 : int.MaxValue)
                .Any(n => n.Value.EndsWith(" pleco", StringComparison.Ordinal)))
            .Select(e => MateSentences.Capital(e.VernacularName)).Order();
        if (kind == " pleco")
            Assert.Equal(plecos, offers.Order());
        else if (kind == "none")
            Assert.Empty(offers);
        else
            Assert.Contains(one, offers);
        if (offers.Count == 0)
            return;
        await page.Locator("#choices button").First.ClickAsync();
        Assert.EndsWith(" added.", await page.InnerTextAsync("#name-message"), StringComparison.Ordinal);
        Assert.Equal(0, await page.Locator("#choices button").CountAsync());
        Assert.Equal(1, await page.Locator(".chosen__item").CountAsync());
    }
}
