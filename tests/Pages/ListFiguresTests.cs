using CareSheets.Pages;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages;

/// <summary>Figures in lists of species: those of the species' pages, in words that customers know.</summary>
public sealed class ListFiguresTests
{
    private const string Mark = ", from relatives";

    [Fact]
    public void An_estimate_stands_in_every_list_with_its_mark_and_nothing_else_bears_it()
    {
        var rows = RealSite.Pages["species/index.html"].QuerySelectorAll(".species-table__row").ToList();
        Assert.Equal(RealSite.Entries.Count, rows.Count);
        var estimated = 0;
        foreach (var row in rows)
        {
            var address = "species/" + row.QuerySelector("a")!.GetAttribute("href")!.Split('/')[^1];
            foreach (var (column, label) in new[] { (1, "Temperature"), (2, "pH") })
            {
                var onPage = RealSite.Pages[address].QuerySelectorAll(".range-row")
                    .Single(r => r.QuerySelector("h3")!.TextContent == label);
                var first = onPage.QuerySelector(".range-row__first")!.TextContent;
                var isEstimated = onPage.ClassList.Contains("range-row--estimated");
                Assert.Equal((address, first + (isEstimated ? Mark : "")),
                    (address, row.QuerySelectorAll("td")[column].TextContent));
                estimated += isEstimated ? 1 : 0;
            }
        }
        Assert.True(estimated > 0, "No figure of this collection is estimated, so nothing was tried.");
    }

    [Fact]
    public void No_list_of_species_has_an_abbreviation_of_a_length()
    {
        var cells = RealSite.Pages.Values.SelectMany(p => p.QuerySelectorAll(".species-table td")).ToList();
        Assert.True(cells.Count > RealSite.Entries.Count);
        Assert.All(cells, cell => Assert.DoesNotMatch(@"\b(TL|SL|DW)\b", cell.TextContent));
        Assert.All(RealSite.Pages.Values.SelectMany(p => p.QuerySelectorAll(".species-table thead")),
            head => Assert.Contains("Grown length with its tail", head.TextContent, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2.5 cm TL", "2.5 cm")]
    [InlineData("2.5 cm SL", "2.5 cm without its tail")]
    [InlineData("2.5 cm DW", "2.5 cm across")]
    [InlineData("1 in SL", "3 cm without its tail")] // 2.54, upward
    public void A_length_that_is_not_with_the_tail_says_so_in_its_row(string stated, string shown) =>
        Assert.Equal(shown, ToySite
            .Read(change: w => w.Replace("content/species/danio-margaritatus.md", "1 in TL", stated))
            .At<SpeciesListPage>("species/index.html").Species
            .Single(r => r.ScientificName == "Danio margaritatus").Length);

    [Fact]
    public void Every_row_of_every_list_is_in_the_units_of_the_shop_whatever_the_writer_typed()
    {
        Assert.Contains(RealContent.Collection.Entries, e => e.Adult.Length.Value.Unit.Symbol == "in");
        var rows = RealSite.Pages.Values.SelectMany(p => p.QuerySelectorAll(".species-table__row")).ToList();
        Assert.All(rows, row => Assert.DoesNotMatch(@"°F|\bin\b", string.Join(' ',
            row.QuerySelectorAll("td").Take(2).Select(c => c.TextContent))));
    }

    [Fact]
    public void A_figure_borrowed_of_a_relative_bears_the_mark_too()
    {
        var row = ToySite
            .Read(change: w => w.Replace(
                "content/species/danio-margaritatus.md", "ph: 6.8–8.0",
                "ph: { keep: 6.8–8.0, evidence: { like: danio-rerio } }"))
            .At<SpeciesListPage>("species/index.html").Species
            .Single(r => r.ScientificName == "Danio margaritatus");
        Assert.Equal("6.8–8.0" + Mark, row.Acidity);
        Assert.DoesNotContain(Mark, row.Temperature, StringComparison.Ordinal);
    }
}
