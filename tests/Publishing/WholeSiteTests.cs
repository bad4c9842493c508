using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Publishing;

/// <summary>Every page of the site of the repository's own content, as a reader or a screen reader meets it.</summary>
public sealed class WholeSiteTests
{
    private static readonly string[] Species = [.. RealSite.Entries];

    [Fact]
    public void Every_entry_has_its_page_its_sheet_and_its_card()
    {
        Assert.True(Species.Length >= 20, $"Only {Species.Length} entries were found.");
        Assert.All(Species, name => Assert.All(
            [$"species/{name}.html", $"papers/sheet-{name}.html", $"papers/card-{name}.html"],
            address => Assert.Contains(address, RealSite.Pages.Keys)));
    }

    [Fact]
    public void Every_page_has_one_main_heading_and_levels_do_not_skip() => Everywhere(page =>
    {
        var levels = page.QuerySelectorAll("h1, h2, h3, h4, h5, h6").Select(h => h.LocalName[1] - '0').ToList();
        Assert.Equal(1, levels[0]);
        Assert.Single(levels, 1);
        Assert.All(levels.Zip(levels.Skip(1)), pair =>
            Assert.True(pair.Second <= pair.First + 1, string.Join(' ', levels)));
        Assert.DoesNotContain(page.QuerySelectorAll("h1, h2, h3"), h => h.TextContent.Trim().Length == 0);
    });

    [Fact]
    public void Every_page_has_its_language_a_title_a_description_and_one_main_part() => Everywhere(page =>
    {
        Assert.NotEqual("", page.DocumentElement.GetAttribute("lang") ?? "");
        Assert.NotEqual("", page.Title);
        Assert.NotEqual("", page.QuerySelector("meta[name=description]")!.GetAttribute("content"));
        Assert.Single(page.QuerySelectorAll("main"));
        Assert.NotEmpty(page.QuerySelectorAll("meta[http-equiv=Content-Security-Policy]"));
    });

    [Fact]
    public void Titles_tell_pages_apart() =>
        Assert.All(RealSite.Pages.GroupBy(p => p.Value.Title, p => p.Key), same =>
            Assert.True(same.Count() == 1, string.Join(' ', same)));

    [Fact]
    public void Pictures_say_what_they_show() => Everywhere(page =>
    {
        Assert.All(page.Images, image => Assert.True(image.HasAttribute("alt")));
        // A leaf of cards is no picture: its text is text, and read as such.
        Assert.All(page.QuerySelectorAll("svg.leaf__sheet"), leaf => Assert.NotEmpty(leaf.QuerySelectorAll("text")));
        Assert.All(page.QuerySelectorAll("svg:not(.leaf__sheet)").Where(IsOutermost), svg => Assert.True(
            svg.GetAttribute("aria-hidden") == "true" ||
            (svg.GetAttribute("role") == "img" && svg.GetAttribute("aria-label")?.Length > 0), svg.OuterHtml));
    });

    [Fact]
    public void Tables_have_a_caption_and_header_cells_with_their_scope() => Everywhere(page =>
    {
        foreach (var table in page.QuerySelectorAll("table"))
        {
            Assert.NotEqual("", table.QuerySelector("caption")?.TextContent.Trim() ?? "");
            Assert.All(table.QuerySelectorAll("thead th"), th => Assert.Equal("col", th.GetAttribute("scope")));
            // A row of one cell heads the rows of its group and stands first among them.
            Assert.All(table.QuerySelectorAll("tbody tr"), tr => Assert.Equal(
                tr.Children.Length == 1 && tr.PreviousElementSibling is null ? "rowgroup" : "row",
                tr.QuerySelector("th")?.GetAttribute("scope")));
        }
    });

    [Fact]
    public void Nothing_of_a_template_is_left_over() => Everywhere(page =>
    {
        var text = page.DocumentElement.OuterHtml;
        Assert.DoesNotContain("{{", text, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\{[a-z_]+\}", page.Body!.TextContent);
        Assert.DoesNotMatch(@"\b(sentence|fact|menu|evidence|kind|basis)\.[A-Za-z_]+", page.Body!.TextContent);
        Assert.DoesNotContain("CareSheets.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("  ·  ", text, StringComparison.Ordinal);
    });

    [Fact]
    public void Every_link_within_the_site_leads_to_a_page_and_to_a_place_on_it()
    {
        foreach (var (address, page) in RealSite.Pages)
        {
            foreach (var href in page.QuerySelectorAll("a[href], link[href]").Select(a => a.GetAttribute("href")!))
            {
                var target = new Uri(new Uri($"http://site.example/{address}"), href);
                if (target.Host != "site.example")
                    continue;
                var (path, place) = (target.AbsolutePath[1..], target.Fragment.TrimStart('#'));
                Assert.True(File.Exists(Path.Combine(RealSite.Folder, path)), $"{address} links to {href}");
                var isState = place.Contains('='); // what a script of the page reads
                Assert.True(
                    isState || place.Length == 0 || RealSite.Pages[path].GetElementById(place) is not null,
                    $"{address} links to {href}");
            }
        }
    }

    [Fact]
    public void Every_page_but_papers_for_staff_is_reached_from_home()
    {
        var seen = new HashSet<string> { "index.html" };
        var open = new Queue<string>(seen);
        while (open.TryDequeue(out var address))
        {
            foreach (var link in RealSite.Pages[address].QuerySelectorAll("a[href]"))
            {
                var target = new Uri(new Uri($"http://site.example/{address}"), link.GetAttribute("href"));
                var path = target.AbsolutePath[1..];
                var isPage = target.Host == "site.example" && path.EndsWith(".html", StringComparison.Ordinal);
                if (isPage && seen.Add(path))
                    open.Enqueue(path);
            }
        }
        var unreached = RealSite.Pages
            .Where(p => !seen.Contains(p.Key) && p.Value.QuerySelector("meta[name=robots]") is null);
        Assert.Empty(unreached.Select(p => p.Key));
    }

    [Fact]
    public void Scientific_names_are_marked_as_Latin_wherever_they_stand() => Everywhere(page =>
    {
        var names = Species.Select(s => char.ToUpperInvariant(s[0]) + s[1..].Replace('-', ' ')).ToHashSet();
        foreach (var text in page.Body!.Descendants<IText>().Where(t => names.Contains(t.Data.Trim())))
            Assert.Equal("la", text.ParentElement!.Closest("[lang]")!.GetAttribute("lang"));
        Assert.All(page.QuerySelectorAll("[lang=la]"), e => Assert.Matches(
            "^[A-Z]([a-z]+|\\.)( [a-z-]+){0,2}$", IsSecondLine(e) ? $"X. {e.TextContent}" : e.TextContent));
    });

    /// <summary>On a card every line is an element of its own, and may begin with the epithet.</summary>
    private static bool IsSecondLine(IElement name) => name.LocalName == "tspan" && char.IsLower(name.TextContent[0]);

    [Fact]
    public void A_scientific_name_stands_marked_on_the_page_the_sheet_and_the_card() =>
        Assert.All(Species, name => Assert.All(
            [$"species/{name}.html", $"papers/sheet-{name}.html", $"papers/card-{name}.html"],
            address => Assert.Contains(
                char.ToUpperInvariant(name[0]) + name[1..].Replace('-', ' '),
                string.Join(' ', RealSite.Pages[address].QuerySelectorAll("i[lang=la], tspan[lang=la]")
                    .Select(i => i.TextContent)), StringComparison.Ordinal)));

    private static bool IsOutermost(IElement svg) => svg.ParentElement?.Closest("svg") is null;

    private static void Everywhere(Action<IHtmlDocument> check) =>
        Assert.All(RealSite.Pages.OrderBy(p => p.Key, StringComparer.Ordinal), page =>
        {
            try
            {
                check(page.Value);
            }
            catch (Exception fault)
            {
                throw new InvalidOperationException($"{page.Key}: {fault.Message}", fault);
            }
        });
}
