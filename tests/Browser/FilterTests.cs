using CareSheets.Collection;
using CareSheets.Tests.Support;
using Microsoft.Playwright;

namespace CareSheets.Tests.Browser;

/// <summary>The field that finds species by typing, and the same page without scripts.</summary>
[Collection(BrowserTests.Name)]
public sealed class FilterTests(BrowserFixture browser)
{
    private static readonly int All = RealSite.Entries.Count;

    [Fact]
    public async Task Typing_leaves_the_species_that_fit_and_the_heading_says_how_many()
    {
        var page = await OpenAsync(scripts: true);
        Assert.Equal((All, $"{All} species", ""), await StateAsync(page));

        await page.Locator("#filter-text").PressSequentiallyAsync("danio");
        var fits = RealContent.Collection.Entries.Count(e => e.VernacularNames.Select(n => n.Value)
            .Concat(e.FormerNames.Select(n => n.Value.ToString())).Append(e.ScientificName.Value.ToString())
            .Any(name => name.Split(' ').Any(w => w.StartsWith("danio", StringComparison.OrdinalIgnoreCase))) ||
            e.Family.Value == "Danionidae");
        Assert.InRange(fits, 1, All - 1);
        Assert.Equal((fits, $"{fits} species", $"{fits} species shown."), await StateAsync(page));
        Assert.Equal("status", await page.Locator(".filter__told").GetAttributeAsync("role"));
        await page.Locator("#filter-text").FillAsync("");
        Assert.Equal((All, $"{All} species", ""), await StateAsync(page));
    }

    [Theory]
    [InlineData("rerio", 1)]
    [InlineData("  DANIO   Rerio ", 1)]
    [InlineData("rerio danio", 1)]
    [InlineData("brachydanio frankei", 1)] // a former name
    [InlineData("no such fish at all", 0)]
    [InlineData("(.*", 0)]
    [InlineData("neon puffer", 0)] // each word is known, both together are not
    public async Task Words_in_any_order_and_case_find_a_species_by_all_its_names(string typed, int shown)
    {
        var page = await OpenAsync(typed);
        Assert.Equal(shown, (await StateAsync(page)).Shown);
    }

    /// <summary>What people in a shop typed, with what has to come first.</summary>
    [Theory]
    [InlineData("guppies", "guppy")]
    [InlineData("mollies", "molly")]
    [InlineData("tetras", "tetra")]
    [InlineData("corys", "Cories")] // the family, as its row says
    [InlineData("cories", "Cories")]
    [InlineData("loaches", "loach")]
    [InlineData("tetra", "tetra")] // Tetraodontidae are puffers
    [InlineData("rummynose", "Petitella")] // rummy-nose is a name of two
    [InlineData("rummy nose", "Petitella")]
    [InlineData("cherrybarb", "cherry barb")]
    [InlineData("beta", "fighting fish")] // Betta
    [InlineData("otto", "oto")]
    [InlineData("gurami", "gourami")]
    [InlineData("chiclid", "cichlid")]
    [InlineData("danoi", "danio")]
    [InlineData("L46", "zebra pleco")] // in entries L046
    [InlineData("l 046", "zebra pleco")]
    [InlineData("L-18", "gold nugget")]
    [InlineData("LDA 22", "Panaqolus")]
    [InlineData("eel", "eel")] // no steel-blue killifish
    public async Task Plurals_and_slips_find_what_was_meant_and_names_come_first(string typed, string named)
    {
        var page = await OpenAsync(typed);
        var first = await page.Locator(".species-table__row:visible .species-table__names").First.InnerTextAsync();
        Assert.Contains(named, first, StringComparison.OrdinalIgnoreCase);
        if (typed == "eel")
            Assert.DoesNotContain("teel", await page.Locator(".species-table tbody").InnerTextAsync(),
                StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("africa", "Africa")]
    [InlineData("west africa", "Western Africa")]
    [InlineData("Asia", "Asia")]
    [InlineData("south-east asia", "South-eastern Asia")]
    [InlineData("southeast asia", "South-eastern Asia")]
    [InlineData("south america", "South America")]
    [InlineData("central america", "Central America")]
    [InlineData("melanesia", "Melanesia")]
    public async Task Parts_of_the_Earth_find_every_species_from_there(string typed, string region)
    {
        var there = RealContent.Collection.Entries
            .Where(e => e.Origin.CountryCodes.Any(c => RegionCatalogue.Of(c.Value).Contains(region)))
            .Select(e => e.ScientificName.Value.ToString()).ToHashSet();
        Assert.NotEmpty(there);
        var page = await OpenAsync(typed);
        var shown = await page.Locator(".species-table__row:visible [lang=la]").AllInnerTextsAsync();
        Assert.Superset(there, shown.ToHashSet());
    }

    [Fact]
    public async Task What_is_not_here_is_said_and_the_nearest_names_are_offered()
    {
        var page = await OpenAsync("plecostomus"); // of a kind that is here, under that word
        var (shown, heading, told) = await StateAsync(page);
        Assert.Equal((0, "0 species"), (shown, heading));
        Assert.StartsWith("Nothing here is called plecostomus. Did you mean ", told, StringComparison.Ordinal);
        Assert.All(await page.Locator(".filter__near").AllInnerTextsAsync(), name => Assert.EndsWith(" pleco", name));
        await page.Locator(".filter__near").First.ClickAsync();
        Assert.InRange((await StateAsync(page)).Shown, 1, 3);
        await page.Locator("#filter-text").FillAsync("<b>xyzzy</b>");
        Assert.StartsWith(
            "Nothing here is called <b>xyzzy</b>. Ask us.", (await StateAsync(page)).Told, StringComparison.Ordinal);
    }

    /// <summary>Whoever asks for what is not kept here is not sent to fish that are something else.</summary>
    [Theory]
    [InlineData("goldfish")]
    [InlineData("discus")]
    [InlineData("algae eater")]
    [InlineData("60 litre")]
    [InlineData("hypostomus")]
    [InlineData("oscar")]
    [InlineData("clownfish")]
    [InlineData("axolotl")]
    [InlineData("blue discus")]
    [InlineData("piranha")] // the Paraná is a river
    [InlineData("shrimp")]
    public async Task Nothing_unrelated_is_offered(string typed)
    {
        var page = await OpenAsync(typed);
        Assert.Equal((0, "0 species", $"Nothing here is called {typed}. Ask us."), await StateAsync(page));
    }

    [Fact]
    public async Task A_slip_is_told_with_what_is_shown_instead()
    {
        var page = await OpenAsync("otto");
        Assert.StartsWith(
            "Nothing here is called otto. Shown is what is spelt nearly so: oto.", (await StateAsync(page)).Told,
            StringComparison.Ordinal);
        await page.Locator("#filter-text").FillAsync("beta"); // and not the Meta, a river
        Assert.Contains("spelt nearly so: betta.", (await StateAsync(page)).Told, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_scripts_all_species_are_there_and_no_dead_field()
    {
        var page = await OpenAsync(scripts: false);
        Assert.Equal(All, await page.Locator(".species-table__row:visible").CountAsync());
        Assert.False(await page.Locator("#filter-text").IsVisibleAsync());
        Assert.Contains("Without JavaScript", await page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
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

    private async Task<IPage> OpenAsync(string typed)
    {
        var page = await OpenAsync(scripts: true);
        await page.Locator("#filter-text").FillAsync(typed);
        return page;
    }

    private static async Task<(int Shown, string Heading, string Told)> StateAsync(IPage page) => (
        await page.Locator(".species-table__row:visible").CountAsync(),
        await page.Locator(".species-table__caption h2").InnerTextAsync(),
        (await page.Locator(".filter__told").InnerTextAsync()).Trim());
}
