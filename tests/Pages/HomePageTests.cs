using CareSheets.Pages;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages;

/// <summary>The first page: what somebody in the shop wants first.</summary>
public sealed class HomePageTests
{
    [Fact]
    public void Without_arrivals_it_says_that_nothing_has_come_in()
    {
        var home = ToySite.Read().At<HomePage>("index.html");
        Assert.Empty(home.Arrivals);
        Assert.Equal("Nothing has come in lately.", home.Nothing);
    }

    [Fact]
    public void The_newest_arrival_and_the_next_are_told_with_the_days_from_which_fish_are_sold()
    {
        var home = With(
            ("2026-10-30-a", Arrival("2026-10-30", "{ said: o, entry: danio-rerio, count: 3, alive: 3 }")),
            ("2026-11-24-b", Arrival("2026-11-24",
                "{ said: z, entry: danio-rerio, count: 9, alive: 9, price: 2.4 }",
                "{ said: gone, entry: danio-margaritatus, count: 5, alive: 5, gone: 2026-11-25 }",
                "{ said: who knows, count: 3, alive: 3 }")),
            ("2026-12-01-c", Arrival("2026-12-01", "{ said: b, entry: betta-splendens, count: 6 }")));
        Assert.Equal("", home.Nothing);
        Assert.Equal(["Came in on 24 November 2026", "Expected on 1 December 2026"],
            home.Arrivals.Select(a => a.Heading));
        var batch = Assert.Single(home.Arrivals[0].Batches);
        Assert.Equal((new Link("zebra danio", "species/danio-rerio.html"), "Danio rerio"),
            (batch.Species, batch.ScientificName));
        Assert.Equal("sold from 8 December 2026, 2.40 per fish", batch.Told);
        Assert.Equal("sold from 15 December 2026", Assert.Single(home.Arrivals[1].Batches).Told);
        Assert.Equal("", home.Arrivals[0].More);
    }

    [Theory]
    [InlineData(6, 6, "")]
    [InlineData(7, 6, "and 1 more")]
    [InlineData(9, 6, "and 3 more")]
    public void A_long_arrival_is_cut_and_says_by_how_much(int batches, int shown, string more)
    {
        var lines = Enumerable.Repeat("{ said: z, entry: danio-rerio, count: 9, alive: 9 }", batches);
        var arrival = Assert.Single(With(("2026-11-24-b", Arrival("2026-11-24", [.. lines]))).Arrivals);
        Assert.Equal((shown, more), (arrival.Batches.Count, arrival.More));
    }

    /// <summary>The toy's three entries were read on three days; as many more on a later one.</summary>
    [Theory]
    [InlineData(0, "danio-margaritatus danio-rerio betta-splendens")]
    [InlineData(4, "danio-alba danio-bona danio-cana danio-dura danio-margaritatus danio-rerio")]
    [InlineData(7, "")] // of seven nothing tells which to choose
    public void What_was_read_last_is_whole_days_as_long_as_there_is_room(int more, string shown)
    {
        string[] names = ["alba", "bona", "cana", "dura", "fera", "grata", "lata"];
        var home = ToySite.Read(change: w =>
        {
            var entry = File.ReadAllText(w["content/species/danio-margaritatus.md"])
                .Replace("2026-10-03", "2026-10-09", StringComparison.Ordinal);
            foreach (var name in names.Take(more))
                w.Write($"content/species/danio-{name}.md", entry
                    .Replace("margaritatus", name, StringComparison.Ordinal)
                    .Replace("celestial pearl danio", $"{name} danio", StringComparison.Ordinal));
        }).At<HomePage>("index.html");
        Assert.Equal(shown, string.Join(' ', home.Latest.Select(r => r.Href.Split('/', '.')[1])));
    }

    [Fact]
    public void The_field_is_a_form_that_goes_to_all_species_and_only_this_page_may_send_one()
    {
        var form = RealSite.Pages["index.html"].QuerySelector("form")!;
        Assert.Equal(("species/index.html", "get"), (form.GetAttribute("action"), form.GetAttribute("method")));
        Assert.Equal("find", form.QuerySelector("input[type=search]")!.GetAttribute("name"));
        Assert.NotNull(form.QuerySelector("label[for=find]"));
        static bool MaySend(AngleSharp.Html.Dom.IHtmlDocument page) =>
            !page.QuerySelector("meta[http-equiv=Content-Security-Policy]")!.GetAttribute("content")!
                .Contains("form-action 'none'", StringComparison.Ordinal);
        Assert.Equal(["index.html"], RealSite.Pages.Where(p => MaySend(p.Value)).Select(p => p.Key));
    }

    private static string Arrival(string date, params string[] batches) =>
        $"supplier: Larkwater\ndate: {date}\nbatches:\n" + string.Concat(batches.Select(b => $"  - {b}\n"));

    private static HomePage With(params (string Name, string Text)[] arrivals) => ToySite.Read(change: w =>
    {
        foreach (var (name, text) in arrivals)
            w.Write($"content/arrivals/{name}.yaml", text);
    }).At<HomePage>("index.html");
}
