using CareSheets.Pages;
using CareSheets.Pages.Cards;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages;

/// <summary>What is not known is said to be unknown; a gap never reads as a yes.</summary>
public sealed class UnknownRangeTests
{
    private const string Danio = "content/species/danio-rerio.md";

    private static readonly ToySite Toy = ToySite.Read(change: w =>
    {
        w.Replace(Danio, "  hardness: 3–20 °dH\n", "");
        w.Replace(Danio, "  temperature: 18–27 °C\n", "  temperature: { wild: 10–30 °C }\n");
    });

    [Fact]
    public void A_range_that_everyone_asks_for_says_unknown()
    {
        var row = Toy.Row("danio-rerio", "General hardness");
        Assert.Equal(("unknown", ""), (row.First, row.Second));
        Assert.StartsWith("Only 1 other species has a figure of its own", row.Evidence, StringComparison.Ordinal);
        Assert.Null(row.Bar);
    }

    [Fact]
    public void A_range_with_other_kinds_only_has_no_figure_to_keep_it_at()
    {
        var row = Toy.Row("danio-rerio", "Temperature");
        Assert.Equal("unknown", row.First);
        Assert.Null(row.Bar);
        Assert.Equal(("wild", "10–30 °C", "50–86 °F"),
            Assert.Single(row.OtherKinds.Select(k => (k.Kind, k.First, k.Second))));
    }

    [Fact]
    public void Ranges_that_few_need_stay_away_when_unknown() =>
        Assert.Equal(["Temperature", "pH", "General hardness"], Toy.Species("danio-rerio").Water.Select(r => r.Label));

    [Fact]
    public void A_list_of_species_says_unknown_too()
    {
        var row = Toy.At<SpeciesListPage>("species/index.html").Species.Single(r => r.ScientificName == "Danio rerio");
        Assert.Equal("unknown", row.Temperature);
        Assert.Equal("6.5–8.0", row.Acidity);
    }

    [Fact]
    public void Card_and_sheet_say_it_as_well()
    {
        var card = Toy.At<TankCard>("papers/card-danio-rerio.html").Leaf.Cards[0].Texts.Select(t => t.Text).ToList();
        Assert.Equal("unknown", card[card.IndexOf("Temperature") + 1]);
        Assert.Equal("unknown", Toy.At<HomeSheet>("papers/sheet-danio-rerio.html").Water[2].First);
    }

    [Fact]
    public void A_range_for_the_long_term_never_comes_from_another_kind()
    {
        var species = Toy.Species("danio-rerio");
        Assert.DoesNotContain(species.Glance, f => $"{f.Value}{f.Note}".Contains("10–30", StringComparison.Ordinal));
        Assert.Contains(new Fact("Temperature", "unknown"), species.Glance);
    }
}
