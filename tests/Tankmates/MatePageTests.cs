using CareSheets.Pages.Mates;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;
using CareSheets.Tests.Browser;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace CareSheets.Tests.Tankmates;

/// <summary>What customers get in the browser, opened from disk: the same as the program says.</summary>
[Collection(BrowserTests.Name)]
public sealed class MatePageTests(BrowserFixture browser)
{
    private const string AllReasons = """
        async () => {
          await caresheetsLookup.load("tankmates-verdicts.js", "caresheetsVerdicts");
          const count = caresheetsNames.files.length;
          const all = [];
          for (let one = 0; one < count; one++)
            for (let other = one + 1; other < count; other++)
              all.push([caresheetsLookup.verdict(other, one),
                ...caresheetsLookup.reasons(other, one).map((r) => r.text)].join("\n"));
          return all;
        }
        """;

    private const string AllFits = """
        (figures) => [...caresheetsNeeds.tank, ...caresheetsNeeds.salt].map((measure) =>
          measure.limits.map((_, place) => caresheetsTank.worst([measure], place, figures)))
        """;

    private readonly MatePages _pages = new(browser);

    [Fact]
    public async Task The_page_gives_every_pair_the_verdict_and_sentences_of_the_program()
    {
        var page = await _pages.Open("together.html");
        var shown = await page.EvaluateAsync<string[]>(AllReasons);
        var (sentences, count) = (new MateSentences(Shop.Site), Shop.Mates.Mates.Count);
        var expected = Enumerable.Range(0, count).SelectMany(one => Enumerable.Range(one + 1, count - one - 1)
            .Select(other => Shop.Mates.Pair(one, other))
            .Select(p => string.Join(
                '\n', [$"{(int)p.Verdict}", .. p.Reasons.Select(r => sentences.Of(r, p.Verdict))])));
        Assert.Equal(expected, shown);
    }

    [Theory]
    [InlineData("60x30x30cm")]
    [InlineData("48x16x20in")]
    [InlineData("20 US gal")]
    public async Task The_page_fits_every_species_into_a_tank_as_the_program_does(string text)
    {
        var page = await _pages.Open("together.html");
        var tank = TankText.Read(text).Tank!;
        var figures = new Dictionary<string, object> { ["volume"] = tank.Volume!.Value.InLitres };
        foreach (var (name, side) in new[] { ("length", tank.Length), ("width", tank.Width), ("height", tank.Height) })
        {
            if (side is { } known)
                figures[name] = known.InCentimetres;
        }
        var shown = await page.EvaluateAsync<int[][]>(AllFits, figures);
        for (var place = 0; place < Shop.Mates.Mates.Count; place++)
        {
            var worst = TankFit.Worst(TankFit.InTank(Shop.Mates.Mates[place], tank));
            Assert.Equal((int)worst, shown.Max(measure => measure[place]));
        }
    }

    [Fact]
    public async Task A_keyboard_alone_chooses_species_and_the_address_carries_them()
    {
        var page = await _pages.Open("together.html");
        await page.FocusAsync("#ask-name");
        await page.Keyboard.TypeAsync("Neon Tetra");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync("pterophyllum scalare");
        await page.Keyboard.PressAsync("Enter");
        await Say(page, "#verdict", "Keep them apart.");
        await Say(page, "#name-message", "Angelfish added.");
        Assert.EndsWith("#species=paracheirodon-innesi,pterophyllum-scalare", page.Url, StringComparison.Ordinal);
        await page.FocusAsync(".chosen__drop >> nth=1");
        await page.Keyboard.PressAsync("Enter");
        await Say(page, "#name-message", "Angelfish taken out.");
        Assert.Equal("ask-name", await page.EvaluateAsync<string>("() => document.activeElement.id"));
        Assert.Equal([], _pages.Complaints);
    }

    [Fact]
    public async Task A_link_brings_back_species_and_tank()
    {
        var page = await _pages.Open("together.html#species=danio-rerio,betta-splendens&tank=20%20US%20gal");
        Assert.Equal(2, await page.Locator(".chosen__item").CountAsync());
        Assert.Equal("20", await page.InputValueAsync("#tank-volume"));
        Assert.Equal("usGallon", await page.InputValueAsync("#tank-volume-unit"));
        Assert.True(await page.IsVisibleAsync("#tank-verdict"));
        Assert.Contains("yours is not given", await page.InnerTextAsync("#tank-reasons"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Slips_are_answered_and_nothing_breaks()
    {
        var page = await _pages.Open("together.html#species=no-such-fish,danio-rerio,danio-rerio&tank=bad");
        await Say(page, "#name-message", "The address names no-such-fish");
        Assert.Equal(1, await page.Locator(".chosen__item").CountAsync());
        await Choose(page, "neon tetrra");
        await Say(page, "#name-message", "No species here is called neon tetrra. Did you mean one of these?");
        await Choose(page, "zebra danio");
        await Say(page, "#name-message", "Zebra danio is there already.");
        await Choose(page, "L 46"); // in its entry L046
        await Say(page, "#name-message", "Zebra pleco added.");
        await page.FillAsync("#tank-length", "0");
        await page.FillAsync("#tank-width", "40");
        await page.FillAsync("#tank-height", "-5");
        await Say(page, "#tank-message", "A side of a tank is between 10 cm and 1000 cm");
    }

    [Fact]
    public async Task The_shops_tap_fills_in_and_water_outside_every_range_fits_nobody()
    {
        var page = await _pages.Open("fits-my-tank.html");
        await page.ClickAsync("#tap");
        Assert.Equal("7.6", await page.InputValueAsync("#water-ph"));
        Assert.Equal("12", await page.InputValueAsync("#water-hardness"));
        Assert.Equal("", await page.InputValueAsync("#water-temperature"));
        Assert.True(await page.Locator("#fit-0 .mate").CountAsync() > 0);
        await Say(page, "#not-asked", "Not asked, so nobody has said that it fits: Length of the tank");
        await page.FillAsync("#water-temperature", "2");
        Assert.Equal(0, await page.Locator("#fit-0 .mate").CountAsync());
        Assert.Equal("Fits: 0 species", await page.InnerTextAsync("#fit-0 .verdict"));
        await page.FillAsync("#water-ph", "seven");
        await Say(page, "#water-message", "pH: please write a number");
        Assert.Contains("temperature=2%20%C2%B0C", page.Url, StringComparison.Ordinal);
        Assert.Equal([], _pages.Complaints);
    }

    [Fact]
    public async Task A_fish_that_needs_salt_fits_only_water_that_has_it()
    {
        var page = await _pages.Open("fits-my-tank.html#tank=150x60x60cm&temperature=25%20%C2%B0C&ph=7.6");
        var puffer = page.Locator("#fit-0 .mate a[href$='dichotomyctere-nigroviridis.html']");
        Assert.Equal("0", await page.InputValueAsync("#water-salinity"));
        Assert.Equal(0, await puffer.CountAsync());
        await page.FillAsync("#water-salinity", "");
        Assert.Equal(0, await puffer.CountAsync());
        await page.FillAsync("#water-salinity", "some");
        Assert.Equal(0, await puffer.CountAsync());
        await page.FillAsync("#water-salinity", "10");
        Assert.Equal(1, await puffer.CountAsync());
        Assert.Contains("salinity=10%20g%2FL", page.Url, StringComparison.Ordinal);
        Assert.Equal([], _pages.Complaints);
    }

    [Fact]
    public async Task What_relatives_exclude_does_not_fit_and_nothing_unknown_nearly_fits()
    {
        var page = await _pages.Open("fits-my-tank.html#ph=9&hardness=30%20%C2%B0dH");
        foreach (var closed in new[] { "#fit-1", "#fit-2", "#fit-3" })
            await page.EvaluateAsync("list => { document.querySelector(list).open = true; }", closed);
        await page.Locator("#fit-3 .mate").First.WaitForAsync();
        Assert.DoesNotContain("unknown", await page.InnerTextAsync("#fit-1"), StringComparison.Ordinal);
        var puffer = page.Locator("#fit-3 .mate:has(a[href$='carinotetraodon-irrubesco.html'])");
        Assert.Contains(
            "its relatives suggest 6.1–7.2; this is 9.", await puffer.InnerTextAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("temperature", "77", "77 °C is beyond any water that fishes are kept in", "If you mean 77 °F")]
    [InlineData("ph", "20", "pH: 20 is beyond", "(3 to 10.5)")]
    [InlineData("temperature", "24,5", "decimals have a point", "24.5")]
    [InlineData("hardness", "9 apples", "“9 apples” has no unit", "")]
    public async Task A_figure_that_cannot_be_meant_is_told_and_not_asked(
        string field, string typed, string told, string hint)
    {
        var page = await _pages.Open("fits-my-tank.html");
        await page.FillAsync($"#water-{field}", typed);
        Assert.Contains(told, await page.InnerTextAsync("#water-message"), StringComparison.Ordinal);
        Assert.Contains(hint, await page.InnerTextAsync("#water-message"), StringComparison.Ordinal);
        Assert.False(await page.IsVisibleAsync(".outcome"));
    }

    [Theory]
    [InlineData("60,5|30|36|", "Length of the tank: decimals have a point, so write 60.5.", "")]
    [InlineData("60 cm|30|36|", "", "tank=60x30x36cm")]
    [InlineData("24 in|30|36cm|", "", "tank=61x30x36cm")]
    [InlineData("60|30|36|500", "The three sides count; the volume of 500 L", "tank=60x30x36cm")]
    [InlineData("|||1,5", "Volume of the tank: decimals have a point, so write 1.5.", "")]
    [InlineData("|||20 US gal", "", "tank=20%20US%20gal")]
    public async Task A_tank_is_read_with_its_units_and_slips_are_told(string typed, string told, string kept)
    {
        var page = await _pages.Open("fits-my-tank.html");
        foreach (var (field, text) in new[] { "length", "width", "height", "volume" }.Zip(typed.Split('|')))
            await page.FillAsync($"#tank-{field}", text);
        await Say(page, "#tank-message", told);
        Assert.EndsWith(kept, page.Url, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_answer_stands_within_50_ms_of_a_choice()
    {
        var page = await _pages.Open("together.html#species=danio-rerio");
        var took = await page.EvaluateAsync<double[]>("""
            () => ["neon tetra", "angelfish", "panda cory"].map((name) => {
              document.querySelector("#ask-name").value = name;
              const start = performance.now();
              document.querySelector(".ask").requestSubmit();
              document.querySelector(".outcome").getBoundingClientRect();
              return performance.now() - start;
            })
            """);
        Assert.Equal(4, await page.Locator(".chosen__item").CountAsync());
        Assert.InRange(took.Min(), 0, 50); // the least: other tests share the machine
    }

    [Fact]
    public async Task Without_scripts_the_species_page_holds_the_lists_and_the_two_pages_say_so()
    {
        var species = await _pages.Open("species/paracheirodon-axelrodi.html", scripts: false);
        Assert.True(await species.Locator(".mate").CountAsync() > 8);
        Assert.Contains("suit it", await species.InnerTextAsync("main"), StringComparison.Ordinal);
        foreach (var address in new[] { "together.html", "fits-my-tank.html" })
        {
            var page = await _pages.Open(address, scripts: false);
            Assert.Contains("needs JavaScript", await page.InnerTextAsync("noscript"), StringComparison.Ordinal);
            Assert.False(await page.IsVisibleAsync(".ask"));
        }
        var apart = species.Locator(".verdict[data-verdict='2'] + details");
        Assert.Equal(Shop.Mates.Mates.Count(m => Shop.Pair("paracheirodon-axelrodi", m.Name) is
        { Verdict: Verdict.KeepApart }), await apart.Locator("a").CountAsync());
    }

    [Theory]
    [InlineData("together.html#species=danio-rerio,pterophyllum-scalare&tank=120x40x50cm", ColorScheme.Light, 1280)]
    [InlineData("together.html#species=danio-rerio,pterophyllum-scalare&tank=120x40x50cm", ColorScheme.Dark, 390)]
    [InlineData("fits-my-tank.html#tank=60x30x30cm&ph=7.2", ColorScheme.Light, 390)]
    [InlineData("fits-my-tank.html#tank=60x30x30cm&ph=7.2", ColorScheme.Dark, 1280)]
    [InlineData("species/danio-rerio.html", ColorScheme.Light, 390)]
    public async Task Pages_have_no_fault_that_axe_knows_and_never_scroll_sideways(
        string address, ColorScheme scheme, int width)
    {
        var page = await _pages.Open(address, width, scheme);
        var result = await page.RunAxe();
        Assert.Empty(result.Violations.Select(v => $"{v.Id}: {v.Help}: {v.Nodes.FirstOrDefault()?.Html}"));
        Assert.Equal(width, await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
        if (Environment.GetEnvironmentVariable("SHOTS") is { } folder)
            await page.ScreenshotAsync(new()
            {
                FullPage = true,
                Path = Path.Combine(folder, $"{address.Split('.')[0].Replace('/', '-')}-{scheme}-{width}.png"),
            });
    }

    private static async Task Choose(IPage page, string name)
    {
        await page.FillAsync("#ask-name", name);
        await page.PressAsync("#ask-name", "Enter");
    }

    private static async Task Say(IPage page, string selector, string text) =>
        Assert.StartsWith(text, await page.InnerTextAsync(selector), StringComparison.Ordinal);
}
