using CareSheets.Pages;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages;

/// <summary>Families go by the names of customers where there are any, with the Latin name beside.</summary>
public sealed class FamiliesOnPagesTests
{
    private const string Danios = """
        Danionidae:
          vernacularName: [rasboras and danios, danionids]
          text: Small swimmers that like company.

        """;

    private static readonly ToySite Toy = With(Danios);

    [Fact]
    public void The_page_of_a_family_has_its_names_its_text_and_what_that_rests_on()
    {
        var page = Toy.At<TaxonPage>("families/danionidae.html");
        Assert.Equal(("rasboras and danios", "Danionidae", "danionids"),
            (page.Name, page.LatinName, page.OtherNames));
        Assert.False(page.IsLatin);
        Assert.Equal("Small swimmers that like company.", page.Text);
        Assert.Equal("How we know this: from memory, still to be checked.", page.Evidence);
        Assert.StartsWith("rasboras and danios (Danionidae)", page.Frame.Title, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("seen here", "How we know this: seen here.")]
    [InlineData("hamilton1822", "How we know this: published: Francis Hamilton 1822.")]
    public void Evidence_of_its_own_is_shown_as_entries_show_it(string evidence, string shown) =>
        Assert.Equal(shown, With($"{Danios}  evidence: {evidence}\n")
            .At<TaxonPage>("families/danionidae.html").Evidence);

    [Fact]
    public void A_family_without_a_line_keeps_its_Latin_name_and_says_nothing()
    {
        foreach (var page in new[] { Toy, ToySite.Read() }
            .Select(t => t.At<TaxonPage>("families/osphronemidae.html")))
            Assert.Equal(("Osphronemidae", "", "", ""), (page.Name, page.LatinName, page.Text, page.Evidence));
    }

    [Fact]
    public void Lists_show_both_names_and_are_in_the_order_of_those_they_show()
    {
        Assert.Equal(
            [("Osphronemidae", ""), ("rasboras and danios", "Danionidae")],
            Toy.At<HomePage>("index.html").Families.Select(f => (f.Text, f.Beside)));
        Assert.Equal(
            [("Anabantiformes", ""), ("Cypriniformes", "rasboras and danios")],
            Toy.At<TaxaPage>("orders/index.html").Groups.SelectMany(g => g.Taxa).Select(t => (t.Text, t.Beside)));
        Assert.Equal(
            [("rasboras and danios", "Danionidae"), ("Osphronemidae", "")],
            Toy.At<TaxaPage>("genera/index.html").Groups.Select(g => (g.Parent.Text, g.Parent.Beside)));
        var rows = Toy.At<SpeciesListPage>("species/index.html").Species;
        Assert.Equal(
            [("Osphronemidae", ""), ("rasboras and danios", "Danionidae"), ("rasboras and danios", "Danionidae")],
            rows.Select(r => (r.Family, r.LatinFamily)));
    }

    [Fact]
    public void The_way_to_a_species_names_its_family_and_the_filter_finds_it_by_all_names()
    {
        var family = Toy.Species("danio-rerio").Classification[1];
        Assert.Equal(
            new Link("rasboras and danios", "../families/danionidae.html") { Beside = "Danionidae" }, family);
        Assert.Superset(
            new HashSet<string> { "rasboras and danios", "danionids", "Danionidae" },
            FindData.Beyond(Toy.Entry("danio-rerio"), Toy.Site).ToHashSet());
    }

    [Fact]
    public void Names_of_families_are_upright_and_names_of_genera_are_not()
    {
        var page = RealSite.Pages["species/danio-rerio.html"].QuerySelector(".names__place")!;
        Assert.Equal(["Danio"], page.QuerySelectorAll("[lang=la]").Select(e => e.TextContent));
        Assert.Contains("danios and rasboras", page.TextContent, StringComparison.Ordinal);
        Assert.Contains("Danionidae", page.TextContent, StringComparison.Ordinal);
        Assert.All(RealSite.Pages.Where(p => p.Key.StartsWith("families/", StringComparison.Ordinal)), p =>
            Assert.DoesNotContain(p.Value.QuerySelectorAll("[lang=la]"),
                e => e.TextContent.EndsWith("idae", StringComparison.Ordinal)));
    }

    private static ToySite With(string families) =>
        ToySite.Read(change: w => w.Write("content/families.yaml", families));
}
