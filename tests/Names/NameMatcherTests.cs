using CareSheets.Names;
using CareSheets.Names.Matching;

namespace CareSheets.Tests.Names;

/// <summary>The ladder of matching: three rungs are taken, all others are offered.</summary>
public sealed class NameMatcherTests
{
    private static readonly NamedSpecies[] Shop =
    [
        Species("Danio rerio", "Brachydanio rerio; Danio frankei", "zebra danio; zebrafish"),
        Species("Danio kyathit", "", "orange-finned danio"),
        Species("Betta splendens", "", "Siamese fighting fish; betta"),
        Species("Botia striata", "", "zebra loach"),
        Species("Brochis splendens", "Corydoras splendens", "emerald catfish"),
        Species("Hoplisoma sterbai", "Corydoras sterbai", "Sterba's cory"),
        Species("Osteogaster aenea", "Corydoras aeneus", "bronze cory"),
        Species("Pelvicachromis pulcher", "Pelmatochromis pulcher", "kribensis"),
        Species("Apistogramma cacatuoides", "", "cockatoo dwarf cichlid"),
        Species("Ancistrus dolichopterus", "", "starlight bristlenose", "L183"),
        Species("Hypancistrus zebra", "", "zebra pleco", "L046;L098"),
        Species("Xiphophorus hellerii", "", "green swordtail"),
        Species("Nothobranchius guentheri", "", "redtail notho"),
        Species("Carnegiella strigata", "", "marbled hatchetfish"),
        Species("Trichogaster lalius", "Colisa lalia", "dwarf gourami"),
    ];

    private static readonly NameMatcher Matcher = new(new NameIndex(Shop), GenusTable.Known);

    [Theory]
    [InlineData("Danio rerio", "danio-rerio", MatchRung.Exact)]
    [InlineData("Danio rerio (Hamilton, 1822)", "danio-rerio", MatchRung.Exact)]
    [InlineData("Brachydanio rerio", "danio-rerio", MatchRung.FormerName)]
    [InlineData("Colisa lalia", "trichogaster-lalius", MatchRung.FormerName)]
    [InlineData("Colisa lalius", "trichogaster-lalius", MatchRung.Spelling)]
    [InlineData("Xiphophorus helleri", "xiphophorus-hellerii", MatchRung.Spelling)]
    [InlineData("Nothobranchius güntheri", "nothobranchius-guentheri", MatchRung.Spelling)]
    [InlineData("Corydoras aenea", "osteogaster-aenea", MatchRung.Spelling)]
    [InlineData("Pelvicachromis pulchra", "pelvicachromis-pulcher", MatchRung.Spelling)]
    public void Valid_former_and_equivalent_names_are_taken(string text, string key, MatchRung rung)
    {
        var match = Matcher.Match(WrittenName.Of(text));
        Assert.Equal((key, rung), (match.Taken?.Species.Key, match.Taken?.Rung));
        Assert.Equal(Doubt.None, match.Doubt);
    }

    [Theory]
    [InlineData("Danio reiro", "danio-rerio", Doubt.GenusExists)]
    [InlineData("Dannio rerio", "danio-rerio", Doubt.OnlyLike)]
    [InlineData("Xyphoforus heleri", "xiphophorus-hellerii", Doubt.OnlyLike)]
    [InlineData("Apistogrania cacatuoides", "apistogramma-cacatuoides", Doubt.OnlyLike)]
    [InlineData("Aphistogramma kakatuoides", "apistogramma-cacatuoides", Doubt.OnlyLike)]
    [InlineData("Camegiella strigata", "carnegiella-strigata", Doubt.OnlyLike)] // rn read as m
    [InlineData("Dan1o rerio", "danio-rerio", Doubt.OnlyLike)]
    [InlineData("Hypancistrus sp. L46", "hypancistrus-zebra", Doubt.Qualified)]
    [InlineData("L 98", "hypancistrus-zebra", Doubt.OnlyLike)]
    [InlineData("zebra plecos", "hypancistrus-zebra", Doubt.OnlyLike)]
    [InlineData("Corydoras cf. aeneus", "osteogaster-aenea", Doubt.Qualified)]
    [InlineData("Xiphophorus hellerii x maculatus", "xiphophorus-hellerii", Doubt.Hybrid)]
    [InlineData("Xiphophorus hellerii maculatus", "xiphophorus-hellerii", Doubt.GenusExists)]
    [InlineData("A. cacatuoides", "apistogramma-cacatuoides", Doubt.OnlyLike)]
    public void All_else_is_offered_with_the_right_one_first(string text, string key, Doubt doubt)
    {
        var match = Matcher.Match(WrittenName.Of(text));
        Assert.Null(match.Taken);
        Assert.NotEmpty(match.Others);
        Assert.Equal((key, doubt), (match.Others[0].Species.Key, match.Doubt));
    }

    /// <summary>One letter apart, and both exist: Rees's rule alone would take one for the other.</summary>
    [Theory]
    [InlineData("Dario dario")]
    [InlineData("Dario kajal")]
    [InlineData("Dario kyathit")]
    [InlineData("Botia splendens")]
    [InlineData("Betta striata")]
    public void A_genus_that_exists_is_never_taken_for_its_neighbour(string text)
    {
        var match = Matcher.Match(WrittenName.Of(text));
        Assert.Null(match.Taken);
        Assert.DoesNotContain(match.Others, o => o.Rung == MatchRung.Near);
    }

    [Fact]
    public void A_shortened_genus_is_taken_where_the_list_writes_it_in_full_and_nothing_else_fits()
    {
        WrittenName Written(string text, params string[] genera) =>
            WrittenName.Of(text) with { Genera = genera.ToHashSet() };
        Assert.Equal("hoplisoma-sterbai", Matcher.Match(Written("C. sterbai", "Corydoras")).Taken?.Species.Key);
        Assert.Null(Matcher.Match(Written("C. sterbai", "Colisa")).Taken);
        Assert.Null(Matcher.Match(Written("B. splendens", "Betta")).Taken); // or Brochis
        Assert.Equal(
            ["betta-splendens", "brochis-splendens"],
            Matcher.Match(Written("B. splendens", "Betta")).Others.Take(2).Select(o => o.Species.Key).Order());
    }

    [Theory]
    [InlineData("Danio rerio", "zebra loach")]
    [InlineData("Ancistrus dolichopterus L46", "")]
    public void A_name_whose_neighbour_says_another_species_is_asked(string text, string beside)
    {
        var match = Matcher.Match(WrittenName.Of(text) with { Beside = beside });
        Assert.Null(match.Taken);
        Assert.Equal(Doubt.Contradiction, match.Doubt);
        Assert.InRange(match.Others.Count, 2, NameMatch.MostOthers);
    }

    [Fact]
    public void A_name_of_two_species_is_asked()
    {
        var matcher = new NameMatcher(
            new NameIndex([Species("Danio rerio", "Barbus nigra", ""), Species("Pethia nigra", "Barbus niger", "")]),
            GenusTable.Known);
        Assert.Equal(Doubt.TwoTargets, matcher.Match(WrittenName.Of("Barbus nigrum")).Doubt);
    }

    [Theory]
    [InlineData("")]
    [InlineData("Freight and packing")]
    [InlineData("Osteoglossum bicirrhosum")]
    public void Nothing_is_made_of_nothing(string text)
    {
        var match = Matcher.Match(WrittenName.Of(text));
        Assert.Equal((null, Doubt.NothingLikeIt), (match.Taken, match.Doubt));
    }

    internal static NamedSpecies Species(string valid, string former, string vernacular, string codes = "")
    {
        var name = ScientificName.Parse(valid)!;
        const StringSplitOptions trimmed = StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries;
        return new NamedSpecies(
            name.Slug, name, [.. former.Split(';', trimmed).Select(f => ScientificName.Parse(f)!)],
            codes.Split(';', trimmed), vernacular.Split(';', trimmed));
    }
}
