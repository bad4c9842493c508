using System.Globalization;
using System.ServiceModel.Syndication;
using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;
using AngleSharp.Html.Parser;
using CareSheets.Pages.Stock;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages.Stock;

/// <summary>
/// The feed of new arrivals against the rules of RFC 4287 (The Atom Syndication Format, 2005), section
/// by section, and read once more by a library that other programs read feeds with.
/// </summary>
public sealed class AtomFeedTests
{
    private static readonly XNamespace Atom = "http://www.w3.org/2005/Atom";

    private static readonly string Path = System.IO.Path.Combine(RealSite.Folder, "new-arrivals.atom");

    private static readonly XElement Feed = XDocument.Load(Path).Root!;

    private static List<XElement> Entries => [.. Feed.Elements(Atom + "entry")];

    [Fact]
    public void The_feed_has_what_section_4_1_1_asks_for()
    {
        Assert.Equal(Atom + "feed", Feed.Name);
        foreach (var one in new[] { "id", "title", "updated", "author" })
            Assert.Single(Feed.Elements(Atom + one));
        Assert.NotEqual("", Feed.Element(Atom + "author")!.Element(Atom + "name")!.Value);
        var self = Assert.Single(Links(Feed, "self"));
        Assert.Equal("https://copperbeck.example/new-arrivals.atom", self.Attribute("href")!.Value);
        Assert.Equal("en", Feed.Attribute(XNamespace.Xml + "lang")!.Value);
    }

    [Fact]
    public void Each_entry_has_what_section_4_1_2_asks_for()
    {
        Assert.True(Entries.Count >= 2);
        Assert.All(Entries, entry =>
        {
            foreach (var one in new[] { "id", "title", "updated", "content" })
                Assert.Single(entry.Elements(Atom + one));
            Assert.Single(Links(entry, "alternate"));
        });
    }

    /// <summary>Section 4.2.6: an absolute IRI that no two entries share. RFC 4151 has the form of a tag.</summary>
    [Fact]
    public void Identifiers_are_absolute_and_each_is_used_once()
    {
        var ids = Feed.Descendants(Atom + "id").Select(i => i.Value).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(ids, id => Assert.True(Uri.IsWellFormedUriString(id, UriKind.Absolute), id));
        Assert.All(Entries, e => Assert.Matches(
            @"^tag:copperbeck\.example,\d{4}-\d{2}-\d{2}:[a-z0-9/-]+$", e.Element(Atom + "id")!.Value));
    }

    /// <summary>Section 3.3: RFC 3339 with an upper-case T and Z.</summary>
    [Fact]
    public void Dates_are_those_of_the_arrivals_in_the_form_of_rfc_3339()
    {
        var dates = Feed.Descendants(Atom + "updated").Concat(Feed.Descendants(Atom + "published")).ToList();
        Assert.All(dates, d => Assert.Matches(@"^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}Z$", d.Value));
        var days = Entries.Select(e => DateTimeOffset.Parse(
            e.Element(Atom + "updated")!.Value, CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(days.OrderDescending(), days);
        Assert.Equal(Feed.Element(Atom + "updated")!.Value, Entries[0].Element(Atom + "updated")!.Value);
    }

    /// <summary>Section 4.1.3.3: content of type html is text that an HTML parser makes into a div's content.</summary>
    [Fact]
    public void Content_is_escaped_markup_whose_links_lead_to_pages_of_the_site()
    {
        Assert.All(Entries, entry =>
        {
            var content = entry.Element(Atom + "content")!;
            Assert.Equal("html", content.Attribute("type")!.Value);
            Assert.False(content.HasElements);
            var items = new HtmlParser().ParseDocument(content.Value).QuerySelectorAll("li").ToList();
            Assert.NotEmpty(items);
            Assert.All(items, item => Assert.Contains(
                item.QuerySelector("a")!.GetAttribute("href")!["https://copperbeck.example/".Length..],
                RealSite.Pages.Keys));
        });
    }

    [Fact]
    public void Links_lead_to_the_arrival_on_the_page() => Assert.All(Entries, entry =>
    {
        var target = new Uri(Assert.Single(Links(entry, "alternate")).Attribute("href")!.Value);
        Assert.NotNull(RealSite.Pages[target.AbsolutePath[1..]].GetElementById(target.Fragment[1..]));
    });

    [Fact]
    public void Another_reader_of_feeds_understands_it()
    {
        using var reader = XmlReader.Create(Path);
        var read = SyndicationFeed.Load(reader);
        Assert.Equal("New arrivals at Copperbeck Fishroom", read.Title.Text);
        Assert.Equal(Entries.Count, read.Items.Count());
        Assert.All(read.Items, i => Assert.Contains("lang=\"la\"", ((TextSyndicationContent)i.Content).Text,
            StringComparison.Ordinal));
        Assert.Equal(new DateTimeOffset(2026, 11, 24, 0, 0, 0, TimeSpan.Zero), read.LastUpdatedTime);
    }

    [Fact]
    public void Every_page_names_the_feed_in_its_head() => Assert.All(RealSite.Pages, page =>
    {
        var link = Assert.Single(page.Value.QuerySelectorAll("link[rel=alternate][type='application/atom+xml']"));
        Assert.EndsWith("new-arrivals.atom", link.GetAttribute("href"), StringComparison.Ordinal);
        Assert.NotEqual("", link.GetAttribute("title"));
    });

    [Fact]
    public void Markup_in_an_arrival_stays_text_in_the_feed_and_in_its_content()
    {
        var toy = ToySite.Read(change: w => w.Overlay(Repository.At("tests", "Cases", "110-arrivals", "hostile-text")));
        var feed = XDocument.Parse(ArrivalFeed.Make(toy.Site).Text).Root!;
        var content = Assert.Single(feed.Descendants(Atom + "content")).Value;
        var document = new HtmlParser().ParseDocument(content);
        Assert.Empty(document.QuerySelectorAll("b, script, [onmouseover]"));
        Assert.Contains("<b onmouseover=alert(1)>gold</b>", document.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("]]> & \" Rio", document.Body.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shop_without_arrivals_has_a_feed_without_entries()
    {
        var feed = XDocument.Parse(ArrivalFeed.Make(ToySite.Read().Site).Text).Root!;
        Assert.Empty(feed.Elements(Atom + "entry"));
        Assert.Matches(new Regex("^2026-.+Z$"), feed.Element(Atom + "updated")!.Value);
    }

    private static IEnumerable<XElement> Links(XElement of, string relation) =>
        of.Elements(Atom + "link").Where(l => l.Attribute("rel")?.Value == relation);
}
