using CareSheets.Names;
using CareSheets.Regulations;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Regulations;

/// <summary>Looking for taxa in lists of law: by every name, at every rank, and never "allowed".</summary>
public sealed class RegulationFinderTests
{
    [Theory]
    [InlineData(RuleRank.Species, "Channa argus")]
    [InlineData(RuleRank.Genus, "Channa")]
    [InlineData(RuleRank.Family, "Xidae")]
    [InlineData(RuleRank.Order, "Xiformes")]
    [InlineData(RuleRank.Species, "Ophicephalus argus")]
    [InlineData(RuleRank.Genus, "Ophicephalus")]
    public void A_line_of_any_rank_finds_a_fish_by_today_s_or_a_former_name(RuleRank rank, string listed) =>
        Assert.Equal(OutcomeKind.Listed, LawOf.Ask(
            LawOf.List(LawOf.Rule(rank, listed)), LawOf.Fish("Channa argus", former: ["Ophicephalus argus"])).Kind);

    [Theory]
    [InlineData("Fundulus heteroclita", true)] // the ending follows the gender of the genus, ICZN Art. 34.2
    [InlineData("Fundulus heteroclitum", true)]
    [InlineData("Fundulus hetero", false)]
    [InlineData("Gambusia heteroclitus", false)]
    public void Endings_make_no_difference_and_other_letters_do(string listed, bool found) =>
        Assert.Equal(found ? OutcomeKind.Listed : OutcomeKind.NotFound, LawOf.Ask(
            LawOf.List(LawOf.Rule(RuleRank.Species, listed)), LawOf.Fish("Fundulus heteroclitus")).Kind);

    [Fact]
    public void An_old_generic_name_that_a_list_gives_beside_its_own_counts() =>
        Assert.Equal("Pygocentrus nattereri", LawOf.Ask(
            LawOf.List(LawOf.Rule(RuleRank.Genus, "Serrasalmus") with { Also = ["Pygocentrus", "Taddyella"] }),
            LawOf.Fish("Pygocentrus nattereri")).Name);

    [Fact]
    public void An_exception_counts_for_the_valid_name_and_not_for_a_former_one()
    {
        var list = LawOf.List(LawOf.Rule(RuleRank.Genus, "Tilapia") with { Except = ["Tilapia sparrmanii"] });
        Assert.Equal(OutcomeKind.Excepted, LawOf.Ask(list, LawOf.Fish("Tilapia sparrmanii")).Kind);
        Assert.Equal(OutcomeKind.Listed, LawOf.Ask(
            list, LawOf.Fish("Coptodon zillii", former: ["Tilapia zillii", "Tilapia sparrmanii"])).Kind);
    }

    [Fact]
    public void Exceptions_that_nobody_wrote_down_leave_the_answer_open()
    {
        var outcome = LawOf.Ask(
            LawOf.List(LawOf.Rule(RuleRank.Genus, "Tilapia") with { HasUnknownExceptions = true }),
            LawOf.Fish("Tilapia busumana"));
        Assert.Equal((OutcomeKind.NotChecked, UncheckedReason.ExceptionsNotHere), (outcome.Kind, outcome.Reason));
    }

    [Fact]
    public void The_strictest_line_wins_within_a_list_and_among_lists()
    {
        var mild = LawOf.List("mild", "DE", ListExtent.Whole,
            LawOf.Rule(RuleRank.Species, "Danio rerio", RegulationEffect.Trade, "Appendix II"));
        var both = LawOf.List("strict", "everywhere", ListExtent.Whole,
            LawOf.Rule(RuleRank.Species, "Danio rerio", RegulationEffect.Permit),
            LawOf.Rule(RuleRank.Genus, "Danio", RegulationEffect.Prohibited));
        var status = new RegulationFinder([mild, both], "DE").Of(LawOf.Fish("Danio rerio"));
        var strictest = status.Strictest!;
        Assert.Equal(("strict", RegulationEffect.Prohibited), (strictest.List.Key, strictest.Rule!.Effect));
        Assert.Equal(["strict", "mild"], status.Of(OutcomeKind.Listed).Select(o => o.List.Key));
    }

    [Fact]
    public void A_list_without_its_names_is_not_checked_whatever_is_asked()
    {
        var outcome = LawOf.Ask(LawOf.List("order", "DE", ListExtent.None), LawOf.Fish("Danio rerio"));
        Assert.Equal((OutcomeKind.NotChecked, UncheckedReason.NamesNotHere), (outcome.Kind, outcome.Reason));
    }

    [Fact]
    public void A_name_whose_family_is_unknown_is_met_by_a_genus_of_the_family_or_left_open()
    {
        var list = LawOf.List(LawOf.Rule(RuleRank.Family, "Clariidae") with { Genera = ["Clarias"] });
        Assert.Equal(OutcomeKind.Listed, LawOf.Ask(list, Bare("Clarias batrachus")).Kind);
        var open = LawOf.Ask(list, Bare("Heterobranchus bidorsalis"));
        Assert.Equal((OutcomeKind.NotChecked, UncheckedReason.FamilyUnknown), (open.Kind, open.Reason));
        Assert.Equal(OutcomeKind.NotFound, LawOf.Ask(list, Bare("Danio rerio", "Danionidae")).Kind);
    }

    [Fact]
    public void A_genus_alone_is_left_open_where_a_list_names_species_of_it()
    {
        var list = LawOf.List(LawOf.Rule(RuleRank.Species, "Channa argus"));
        var open = LawOf.Ask(list, AskedTaxon.OfGenus("Channa", "Channidae"));
        Assert.Equal((OutcomeKind.NotChecked, UncheckedReason.SpeciesUnknown), (open.Kind, open.Reason));
        Assert.Equal(OutcomeKind.NotFound, LawOf.Ask(list, AskedTaxon.OfGenus("Danio", "Danionidae")).Kind);
    }

    [Theory]
    [InlineData("GB", "GB-ENG", true)]
    [InlineData("GB-ENG", "GB-ENG", true)]
    [InlineData("GB-SCT", "GB-ENG", false)]
    [InlineData("GB-ENG", "GB", true)] // it has not said in which part it stands
    [InlineData("G", "GB", false)]
    [InlineData("everywhere", null, true)]
    [InlineData("GB", null, false)]
    public void A_law_of_the_whole_reaches_its_parts(string applies, string? shop, bool binds) =>
        Assert.Equal(binds, Jurisdiction.Binds([applies], shop));

    [Fact]
    public void A_list_of_another_place_is_silent_here_and_told_as_elsewhere()
    {
        var list = LawOf.List("us", "US", ListExtent.Whole, LawOf.Rule(RuleRank.Genus, "Channa"));
        var status = new RegulationFinder([list], "GB-ENG").Of(LawOf.Fish("Channa argus"));
        Assert.Empty(status.Here);
        Assert.Equal("us", Assert.Single(status.Elsewhere).List.Key);
        Assert.Empty(new RegulationFinder([list], "GB-ENG").Of(LawOf.Fish("Danio rerio")).Elsewhere);
    }

    private static AskedTaxon Bare(string name, string? family = null) =>
        AskedTaxon.Of(ScientificName.Parse(name)!, family);
}
