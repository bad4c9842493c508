using CareSheets.Diagnostics;
using CareSheets.Pages;
using CareSheets.Rendering;
using CareSheets.Species;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Rendering;

/// <summary>Prose of an entry as markup: which links it may hold, and what it may not do.</summary>
public sealed class ProseRendererTests
{
    private static readonly ToySite Toy = ToySite.Read();

    [Theory]
    [InlineData("[x](danio-margaritatus.md)", "../species/danio-margaritatus.html")]
    [InlineData("[x](danio-margaritatus)", "../species/danio-margaritatus.html")]
    [InlineData("[x](celestichthys-margaritatus.md)", "../species/danio-margaritatus.html")]
    [InlineData("[x](word:shoal)", "../words.html#shoal")]
    [InlineData("[x](https://shop.example/a?b=1&c=2)", "https://shop.example/a?b=1&amp;c=2")]
    [InlineData("[x](mailto:fish@shop.example)", "mailto:fish@shop.example")]
    [InlineData("<https://shop.example/>", "https://shop.example/")]
    [InlineData("[x][there]\n\n[there]: danio-margaritatus.md", "../species/danio-margaritatus.html")]
    public void A_link_leads_to_an_entry_a_word_or_the_web(string markdown, string href) =>
        Assert.Contains($"<a href=\"{href}\"", Page(markdown), StringComparison.Ordinal);

    [Theory]
    [InlineData("[x](danio-reiro.md)", "LK401", "Did you mean danio-rerio?")]
    [InlineData("[x](no-such-fish.md)", "LK401", "Check how it is spelt.")]
    [InlineData("[x](word:shaol)", "LK402", "Did you mean shoal?")]
    [InlineData("[x](javascript:alert(1))", "LK404", "")]
    [InlineData("[x](JaVaScRiPt:alert(1))", "LK404", "")]
    [InlineData("[x](&#106;avascript:alert(1))", "LK404", "")]
    [InlineData("[x](data:text/html,hello)", "LK404", "")]
    [InlineData("[x](http://shop.example/)", "LK404", "")]
    [InlineData("[x](//shop.example/)", "LK404", "")]
    [InlineData("[x](../about.html)", "LK404", "")]
    [InlineData("<javascript:alert(1)>", "LK404", "")]
    [InlineData("[x][t]\n\n[t]: vbscript:x", "LK404", "")]
    [InlineData("![a fish](danio-rerio.png)", "LK405", "")]
    [InlineData("![a fish](https://shop.example/fish.png)", "LK405", "")]
    [InlineData("<b>bold</b>", "LK406", "")]
    [InlineData("before <!-- hidden -->", "LK406", "")]
    public void What_a_link_may_not_do_is_told(string markdown, string code, string hint)
    {
        var (_, bag) = Render(markdown);
        var told = bag.Sorted()[0];
        Assert.Equal(code, told.Code.Id);
        Assert.Contains(hint, told.Hint, StringComparison.Ordinal);
        Assert.EndsWith("danio-rerio.md", told.Span.File, StringComparison.Ordinal);
    }

    [Fact]
    public void A_refused_link_points_nowhere_even_if_shown()
    {
        var (prose, _) = Render("[a](javascript:alert(1)) <javascript:alert(2)> ![b](https://x.example/p.png)");
        Assert.DoesNotContain("javascript:alert(1)", prose!.ForPage.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("href=\"javascript", prose.ForPage.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("x.example", prose.ForPage.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mistake_is_told_at_its_line_and_column_in_the_file()
    {
        var (_, bag) = Render("First line.\n\nSecond [link](no-such-fish) here.");
        var prose = Toy.Entry("danio-rerio").Prose.Start.Start;
        Assert.Equal(new SourcePosition(prose.Line + 2, 8), Assert.Single(bag.Sorted()).Span.Start);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("<img src=x onerror=alert(1)>")]
    [InlineData("a <b onclick=\"x\">bold</b> word")]
    [InlineData("<?php echo 1 ?>")]
    [InlineData("<style>p{}</style>")]
    [InlineData("[x](danio-margaritatus \"a\\\" onclick=\\\"alert(1)\")")]
    [InlineData("[x](danio-margaritatus){onclick=alert(1)}")]
    [InlineData("a paragraph {#id .class onclick=alert(1)}")]
    public void Html_and_attributes_in_prose_are_text(string markdown)
    {
        var parsed = new AngleSharp.Html.Parser.HtmlParser().ParseDocument(Page(markdown));
        var elements = parsed.Body!.QuerySelectorAll("*");
        Assert.All(elements, e => Assert.Contains(e.LocalName, new[] { "p", "a" }));
        Assert.All(elements.SelectMany(e => e.Attributes), a => Assert.Contains(a.Name, new[] { "href", "title" }));
    }

    [Theory]
    [InlineData("# One", "<h3>One</h3>")]
    [InlineData("## Two", "<h4>Two</h4>")]
    [InlineData("Under\n=====", "<h3>Under</h3>")]
    [InlineData("###### Six", "<h6>Six</h6>")]
    public void Headings_of_the_prose_stand_below_those_of_the_page(string markdown, string expected) =>
        Assert.Contains(expected, Page(markdown), StringComparison.Ordinal);

    [Theory]
    [InlineData("See the [*bold* cousin](danio-margaritatus.md) there.", "<p>See the <em>bold</em> cousin there.</p>")]
    [InlineData("Ask <https://shop.example/> now.", "<p>Ask https://shop.example/ now.</p>")]
    [InlineData("Write to <fish@shop.example> now.", "<p>Write to fish@shop.example now.</p>")]
    public void On_paper_a_link_is_its_text(string markdown, string expected) =>
        Assert.Equal(expected, Render(markdown).Prose!.ForPaper.Markup.Trim());

    [Theory]
    [InlineData('>', 2000)]
    [InlineData('[', 20000)]
    public void Prose_nested_without_end_is_told_and_never_crashes(char what, int times)
    {
        var (prose, bag) = Render(new string(what, times) + " x");
        Assert.True(prose is not null || bag.Sorted().Single().Code == LinkCodes.UnreadableProse);
    }

    private static string Page(string markdown) => Render(markdown).Prose!.ForPage.Markup;

    private static (SpeciesProse? Prose, DiagnosticBag Bag) Render(string markdown)
    {
        var entry = Toy.Entry("danio-rerio");
        var bag = new DiagnosticBag();
        var prose = new ProseRenderer(Toy.Collection).Render(
            entry with { Prose = new Prose(markdown, entry.Prose.Start) }, bag);
        return (prose, bag);
    }
}
