using CareSheets.Pages.Cards;
using CareSheets.Paper;
using CareSheets.Paper.Layout;
using CareSheets.Quantities;
using CareSheets.Species;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages;

/// <summary>What a card may not leave out while it says something friendlier, in every size.</summary>
public sealed class CardContentTests
{
    private static readonly CardPageMaker Maker = new(RealPages.Site);

    public static TheoryData<string> Sizes() =>
        ["A6", "A6 landscape", "A7", "A7 landscape", "90x55 mm", "55x90 mm", "50x40 mm"];

    [Theory]
    [MemberData(nameof(Sizes))]
    public void No_card_calls_a_hunter_peaceful_without_what_it_hunts(string size)
    {
        var hunters = RealPages.Collection.Entries.Where(e => e.Company.EatsFish).ToList();
        Assert.True(hunters.Count > 5);
        Assert.All(hunters, e => Assert.Equal(
            Says(e, size, "To others"), Says(e, size, "eats small fish")));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void No_card_tells_the_temper_to_others_of_a_fish_that_kills_its_kind_without_that(string size)
    {
        var fierce = RealPages.Collection.Entries.Where(e => e.Company.OwnKind.Value == "fierce").ToList();
        Assert.True(fierce.Count > 4);
        Assert.All(fierce.Where(e => Says(e, size, "To others")), e =>
            Assert.True(Says(e, size, "fierce to its own kind") || Says(e, size, "Own kind"), e.Name));
    }

    [Theory]
    [InlineData("A6")]
    [InlineData("A7")]
    [InlineData("90x55 mm")]
    public void That_a_fish_wants_no_other_species_beside_it_is_on_its_card(string size)
    {
        var alone = RealPages.Collection.Entries.Where(e => e.Company.Neighbours?.Value == "none").ToList();
        Assert.True(alone.Count > 2);
        Assert.All(alone, e => Assert.True(Says(e, size, "Beside it none"), e.Name));
    }

    [Theory]
    [InlineData("mastacembelus-erythrotaenia", "Group one only fierce to its own kind")]
    [InlineData("mastacembelus-erythrotaenia", "To others peaceful, but eats small fish")]
    [InlineData("mastacembelus-erythrotaenia", "Tank 240 cm × 80 cm, 1000 L")]
    [InlineData("polypterus-senegalus", "Group one alone")]
    [InlineData("dichotomyctere-nigroviridis", "Beside it none: it needs a tank to itself")]
    [InlineData("carinotetraodon-travancoricus", "Beside it none but its own kind")]
    [InlineData("apistogramma-agassizii", "To others defends a place of its own")]
    [InlineData("pterophyllum-altum", "18 cm (7.1 in) with its tail, 35 cm (14 in) high")]
    public void The_smallest_card_of_the_trade_says_it(string name, string text) =>
        Assert.True(Says(Entry(name), "90x55 mm", text));

    /// <summary>Both names take two lines in the type of roomier cards.</summary>
    [Theory]
    [InlineData("carinotetraodon-irrubesco")]
    [InlineData("apistogramma-agassizii")]
    public void A_long_name_shrinks_before_it_pushes_out_the_code_or_the_company(string name)
    {
        var plan = Plan(Entry(name), "90x55 mm");
        Assert.Single(plan.Inks.OfType<InkText>(), t => t.Face == Face.Bold && t.Size > Points.ToMillimetres(9.5));
        Assert.Empty(plan.Dropped.Intersect(["QR code", "Group", "Tank"]));
    }

    /// <summary>Fresh water has less than 0.5 g/L: who merely bears salt is told hardness instead.</summary>
    [Theory]
    [InlineData("poecilia-velifera", "General hardness")]
    [InlineData("dichotomyctere-nigroviridis", "Salinity")]
    public void Salt_takes_the_place_of_hardness_only_where_it_is_needed(string name, string label)
    {
        Assert.True(Says(Entry(name), "A6", label));
        Assert.Contains(RealSite.Pages[$"species/{name}.html"].QuerySelectorAll(".glance__label"),
            l => l.TextContent == label);
        Assert.Equal(label == "Salinity" ? 0 : 1, Words(Entry(name), "A6").Split("General hardness").Length - 1);
    }

    [Fact]
    public void A_scientific_name_in_a_caution_has_its_own_face()
    {
        var names = Plan(Entry("carinotetraodon-irrubesco"), "A6").Inks.OfType<InkText>()
            .Where(t => t.Face == Face.Latin).Select(t => t.Text);
        Assert.Equal(["Carinotetraodon irrubesco", "Carinotetraodon lorteti"], names);
    }

    [Fact]
    public void The_day_of_the_last_reading_says_what_it_is()
    {
        Assert.All(RealPages.Collection.Entries, e => Assert.Contains("facts of ", Words(e, "A6"),
            StringComparison.Ordinal));
        Assert.All(RealPages.Collection.Arrivals.Arrivals.SelectMany(a => a.Batches.Select(b => (a, b))), delivery =>
        {
            var offer = CardOffer.Of(new(delivery.a, delivery.b), RealPages.Site);
            Assert.Matches("^sold from [0-9]+ [A-Z][a-z]+ 20[0-9]{2}$", offer.Release);
            Assert.Matches("^(.+ per fish)?$", offer.Price);
        });
    }

    private static Entry Entry(string name) => RealPages.Collection.Entries.Single(e => e.Name == name);

    private static CardPlan Plan(Entry entry, string size) => Maker.Plan(entry, PaperSizeText.Read(size)!.Value);

    private static bool Says(Entry entry, string size, string text) =>
        Words(entry, size).Contains(text, StringComparison.Ordinal);

    private static string Words(Entry entry, string size) =>
        string.Join(' ', Plan(entry, size).Inks.OfType<InkText>().Select(t => t.Text));
}
