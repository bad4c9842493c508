using CareSheets.Pages;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages;

/// <summary>How do we know? Every figure names what it rests on.</summary>
public sealed class EvidenceOnPagesTests
{
    private const string Danio = "content/species/danio-rerio.md";
    private static readonly ToySite Toy = ToySite.Read();

    [Theory]
    [InlineData("danio-rerio", "pH", "published: Francis Hamilton 1822")]
    [InlineData("danio-rerio", "Temperature", "common practice, no source")]
    [InlineData("danio-margaritatus", "pH", "from memory, still to be checked")]
    [InlineData("betta-splendens", "pH", "from relatives: borrowed from Danio rerio")]
    public void A_row_says_where_its_figure_comes_from(string species, string label, string evidence) =>
        Assert.Equal(evidence, Toy.Row(species, label).Evidence);

    [Fact]
    public void What_was_seen_here_says_so() =>
        Assert.Equal("seen here", ToySite
            .Read(change: w => w.Replace(Danio, "evidence: hamilton1822", "evidence: seen here"))
            .Row("danio-rerio", "pH").Evidence);

    [Fact]
    public void The_answer_names_the_exceptions_and_then_nothing_twice() =>
        Assert.Equal(
            [
                new Fact("pH, keep at", "published: Francis Hamilton 1822"),
                new Fact("All other figures", "common practice, no source"),
            ],
            Toy.Species("danio-rerio").Evidence);

    [Fact]
    public void Without_exceptions_one_line_is_all() =>
        Assert.Equal(
            [new Fact("All figures", "from memory, still to be checked")], Toy.Species("danio-margaritatus").Evidence);

    [Fact]
    public void The_home_sheet_carries_it_in_a_line() =>
        Assert.Equal(
            "pH: from relatives: borrowed from Danio rerio. All other figures: common practice, no source.",
            Toy.At<HomeSheet>("papers/sheet-betta-splendens.html").EvidenceLine);

    [Fact]
    public void Another_kind_of_range_names_its_source_where_it_differs()
    {
        var toy = ToySite.Read(change: w => w.Replace(Danio, "temperature: 18–27 °C",
            "temperature: { keep: 18–27 °C, survives: 8–38 °C, evidence: { survives: hamilton1822 } }"));
        Assert.Equal(
            new KindLine("survives for a time", "8–38 °C", "47–100 °F", "published: Francis Hamilton 1822")
            {
                IsOnlySurvived = true,
            },
            Assert.Single(toy.Row("danio-rerio", "Temperature").OtherKinds)); // 46.4 and 100.4 °F, inward
    }

    [Fact]
    public void A_work_is_cited_with_author_year_title_and_a_full_stop()
    {
        var work = Assert.Single(Toy.Species("danio-rerio").References);
        Assert.Equal("ref-hamilton1822", work.Id);
        Assert.Equal(
            "Francis Hamilton (1822): An account of the fishes found in the river Ganges and its branches.", work.Text);
        Assert.Equal("", work.Href);
    }

    [Fact]
    public void A_work_with_a_doi_links_to_it()
    {
        var toy = ToySite.Read(change: w => w.Replace(
            "content/references.yaml", "year: 1822", "year: 1822\n  doi: 10.5962/bhl.title.59540"));
        Assert.Equal("https://doi.org/10.5962/bhl.title.59540", toy.Species("danio-rerio").References[0].Href);
    }
}
