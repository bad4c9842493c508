using CareSheets.Pages.Mates;
using CareSheets.Tankmates;

namespace CareSheets.Tests.Tankmates;

/// <summary>
/// What every fish-keeper knows of pairs in the collection: common practice, no source. The
/// verdicts come out of the entries' own figures.
/// </summary>
public sealed class TradeFactTests
{
    [Theory]
    [InlineData("pterophyllum-scalare", "paracheirodon-innesi")]
    [InlineData("pterophyllum-altum", "paracheirodon-axelrodi")]
    [InlineData("polypterus-senegalus", "petitella-rhodostoma")]
    [InlineData("mastacembelus-erythrotaenia", "danio-rerio")]
    public void A_fish_that_swallows_tetras_is_kept_apart_from_them(string predator, string prey)
    {
        var pair = Shop.Pair(predator, prey);
        Assert.Equal(Verdict.KeepApart, pair.Verdict);
        Assert.Equal(ReasonKind.WouldSwallow, pair.Reasons[0].Reason.Kind);
        Assert.Equal(predator, pair.Reasons[0].One.Name);
    }

    [Theory]
    [InlineData("sewellia-lineolata", "mikrogeophagus-ramirezi")]
    [InlineData("sewellia-lineolata", "betta-splendens")]
    [InlineData("tanichthys-albonubes", "mikrogeophagus-ramirezi")]
    public void Cool_streams_and_hot_still_waters_are_kept_apart(string cool, string warm) =>
        Assert.Equal(Verdict.KeepApart, Shop.Pair(cool, warm).Verdict);

    [Theory]
    [InlineData("hoplisoma-sterbai", "paracheirodon-axelrodi")]
    [InlineData("osteogaster-aenea", "hemigrammus-erythrozonus")]
    public void Catfish_on_soft_sand_suit_small_peaceful_tetras_of_the_same_water(string catfish, string tetra) =>
        Assert.Equal(Verdict.Suits, Shop.Pair(catfish, tetra).Verdict);

    /// <summary>
    /// No large, feisty grazer is among the entries, so one is made: of the size and temper that
    /// the trade knows of it.
    /// </summary>
    [Fact]
    public void A_large_feisty_algae_grazer_needs_care_with_sturdy_fish_and_does_not_suit_tiny_ones()
    {
        var grazer = Fish.Plain("grazer") with
        {
            Body = Fish.Plain("grazer").Body with { Length = Stretch.Between(24, 28) },
            Others = Temper.Feisty,
            Levels = Levels.Bottom,
        };
        var sturdy = Fish.Plain("sturdy") with
        {
            Body = Fish.Plain("sturdy").Body with { Length = Stretch.Between(10, 12) },
        };
        var tiny = Fish.Plain("tiny") with { Body = Fish.Plain("tiny").Body with { Length = Stretch.Between(2, 2.5) } };
        Assert.Equal(Verdict.WithCare, Fish.Judge.Judge(grazer, sturdy).Verdict);
        var beside = Fish.Judge.Judge(grazer, tiny);
        Assert.NotEqual(Verdict.Suits, beside.Verdict);
        Assert.Contains(beside.Reasons, r => r.Reason.Kind == ReasonKind.MuchLarger);
    }

    [Fact]
    public void Two_fighting_fish_of_one_genus_are_kept_apart()
    {
        var pair = Shop.Pair("betta-splendens", "betta-imbellis");
        Assert.Equal(Verdict.KeepApart, pair.Verdict);
        Assert.Contains(pair.Reasons, r => r.Reason.Kind == ReasonKind.TreatsKinAsOwn);
    }

    [Theory]
    [InlineData("hypancistrus-zebra", "hypancistrus-inspector", ReasonKind.NotWith)]
    [InlineData("danio-margaritatus", "danio-erythromicron", ReasonKind.NotWith)]
    [InlineData("neolamprologus-multifasciatus", "osteogaster-aenea", ReasonKind.NotWith)]
    [InlineData("carinotetraodon-travancoricus", "paracheirodon-innesi", ReasonKind.WantsItsOwnKind)]
    [InlineData("neolamprologus-brichardi", "synodontis-petricola", ReasonKind.WantsItsOwnKind)]
    [InlineData("megalamphodus-eques", "poecilia-reticulata", ReasonKind.NipsTrailingFins)]
    [InlineData("puntigrus-tetrazona", "betta-splendens", ReasonKind.NipsTrailingFins)]
    public void What_a_sheet_says_never_to_house_together_is_kept_apart(string one, string other, ReasonKind why)
    {
        var pair = Shop.Pair(one, other);
        Assert.Equal(Verdict.KeepApart, pair.Verdict);
        Assert.Contains(pair.Reasons, r => r.Reason.Kind == why && r.One.Name == one);
    }

    [Theory]
    [InlineData("danio-margaritatus", "botia-striata")]
    [InlineData("boraras-brigittae", "hoplisoma-sterbai")]
    [InlineData("gastrodermus-hastatus", "brochis-splendens")]
    public void A_miniature_that_wants_fishes_of_its_size_needs_care_beside_larger_ones(string tiny, string larger) =>
        Assert.Contains(Shop.Pair(tiny, larger).Reasons, r => r.Reason.Kind == ReasonKind.WantsItsSize);

    [Fact]
    public void A_miniature_suits_another() =>
        Assert.Equal(Verdict.Suits, Shop.Pair("boraras-brigittae", "hyphessobrycon-amandae").Verdict);

    [Theory]
    [InlineData("glossolepis-incisa", "melanotaenia-boesemani")]
    [InlineData("pterophyllum-altum", "pterophyllum-scalare")]
    [InlineData("trigonostigma-espei", "trigonostigma-hengeli")]
    [InlineData("aphyosemion-australe", "fundulopanchax-gardneri")]
    public void Relatives_that_cross_say_so_across_genera_too(string one, string other) =>
        Assert.Single(Shop.Pair(one, other).Reasons, r => r.Reason.Kind == ReasonKind.MayCross);

    [Fact]
    public void Fin_nippers_never_simply_suit_anybody()
    {
        var place = Shop.Mates.PlaceOf("puntigrus-tetrazona");
        Assert.True(Shop.Mates.Mates[place].NipsFins);
        Assert.All(Enumerable.Range(0, Shop.Mates.Mates.Count).Where(p => p != place),
            other => Assert.NotEqual(Verdict.Suits, Shop.Mates.Judge(place, other)));
    }

    [Fact]
    public void Tables_of_all_pairs_say_the_same_as_judging_each_pair()
    {
        var (mates, judge) = (Shop.Mates, new PairJudge(Shop.Collection.Ranges));
        for (var one = 0; one < mates.Mates.Count; one++)
        {
            for (var other = one + 1; other < mates.Mates.Count; other++)
            {
                var pair = judge.Judge(mates.Mates[one], mates.Mates[other]);
                Assert.Equal(pair.Verdict, mates.Judge(one, other));
                Assert.Equal(pair.Verdict, mates.Judge(other, one));
                Assert.Equal(
                    pair.Reasons.Select(r => (r.One.Name, r.Reason)),
                    mates.Pair(other, one).Reasons.Select(r => (r.One.Name, r.Reason)));
            }
        }
    }

    [Fact]
    public void Every_reason_becomes_a_sentence_without_a_blank_left_open()
    {
        var sentences = new MateSentences(Shop.Site);
        foreach (var kind in Enum.GetValues<ReasonKind>())
            Assert.DoesNotContain("mate.", Shop.Site.Words[$"mate.{kind}"], StringComparison.Ordinal);
        var said = Enumerable.Range(1, Shop.Mates.Mates.Count - 1)
            .SelectMany(other => Enumerable.Range(0, other).Select(one => Shop.Mates.Pair(one, other)))
            .SelectMany(p => p.Reasons.Select(r => (r.Reason.Kind, Sentence: sentences.Of(r, p.Verdict)))).ToList();
        Assert.All(said, s => Assert.DoesNotContain("{", s.Sentence, StringComparison.Ordinal));
        Assert.True(said.Select(s => s.Kind).Distinct().Count() > 15);
        Assert.Empty(Shop.Site.Words.Missing);
    }
}
