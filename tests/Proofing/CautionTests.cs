using CareSheets.Pages;
using CareSheets.Proofing;
using CareSheets.Rules;
using CareSheets.Species;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Proofing;

/// <summary>Cautions in order of importance, and who inherits which hazard.</summary>
public sealed class CautionTests
{
    private static IReadOnlyList<Hazard> Hazards => RealContent.Collection.Practice.Hazards;

    /// <summary>
    /// That most catfish families hold venomous species: Wright 2009 (BMC Evol. Biol. 9:282); which ones
    /// of ours is from memory, so all but the armoured suckermouths are presumed to be.
    /// </summary>
    [Fact]
    public void Every_catfish_with_fin_spines_begins_with_them_and_a_doctor()
    {
        var catfishes = RealContent.Collection.Entries
            .Where(e => e.Order.Value == "Siluriformes" && e.Family.Value != "Loricariidae").ToList();
        Assert.True(catfishes.Count > 10);
        Assert.All(catfishes, e =>
        {
            var first = CautionsOf.Entry(e, Hazards)[0];
            Assert.Equal(HazardKind.VenomousSpines, first.Kind);
            Assert.Matches("(?i)spine", first.Text);
            Assert.Matches("(?i)venom", first.Text);
            Assert.Contains("doctor", first.Text, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData("family: Potamotrygonidae\norder: Myliobatiformes", HazardKind.Sting)]
    [InlineData("scientificName: Electrophorus electricus", HazardKind.Shock)]
    [InlineData("family: Malapteruridae\norder: Siluriformes", HazardKind.Shock)]
    [InlineData("scientificName: Pygocentrus nattereri", HazardKind.Bite)]
    [InlineData("family: Tetraodontidae\nadult: { length: 15 cm TL }", HazardKind.PoisonousFlesh, HazardKind.Bite)]
    [InlineData("family: Tetraodontidae\nadult: { length: 3 cm TL }", HazardKind.PoisonousFlesh)]
    [InlineData("family: Loricariidae\norder: Siluriformes", HazardKind.LockingSpines)]
    [InlineData("family: Mochokidae\norder: Siluriformes", HazardKind.VenomousSpines)]
    [InlineData("family: Plotosidae\norder: Siluriformes", HazardKind.Sting)]
    [InlineData("family: Scatophagidae\norder: Acanthuriformes", HazardKind.Sting)]
    [InlineData("family: Osteoglossidae\nadult: { length: 90 cm TL }", HazardKind.Outgrowing)]
    [InlineData("family: Danionidae\nadult: { length: 5 cm TL }")]
    public void Hazards_are_inherited_by_taxon_and_figures(string entry, params HazardKind[] expected)
    {
        var fields = Rules.RuleDesk.Entry(entry);
        Assert.Equal(expected, Hazards.Where(h => !h.IsGeneral && h.When.Judge(fields) == Truth.Yes)
            .Select(h => h.Kind).Order());
    }

    [Fact]
    public void The_gravest_stands_first_and_own_cautions_follow_in_the_writers_order()
    {
        foreach (var entry in RealContent.Collection.Entries)
        {
            var cautions = CautionsOf.Entry(entry, Hazards);
            var kinds = cautions.TakeWhile(c => c.Kind is not null).Select(c => c.Kind!.Value).ToList();
            Assert.Equal(kinds.Order(), kinds);
            var own = cautions.Skip(kinds.Count).ToList();
            Assert.All(own, c => Assert.Null(c.Kind));
            var texts = own.Select(c => c.Text).ToList();
            Assert.Equal(entry.Cautions.Select(c => c.Value).Where(texts.Contains), texts);
        }
    }

    [Fact]
    public void No_caution_of_an_entry_is_lost_and_none_is_told_twice() =>
        Assert.All(RealContent.Collection.Entries, entry =>
        {
            var told = CautionsOf.Entry(entry, Hazards).Select(c => c.Text).ToList();
            Assert.Empty(entry.Cautions.Select(c => c.Value).Except(told));
            Assert.Equal(told.Distinct(), told);
        });

    [Fact]
    public void An_own_caution_stands_in_only_when_it_says_what_the_hazard_needs()
    {
        var hazard = Hazards.Single(h => h.Name.Value == "catfish-spines");
        Assert.True(hazard.IsToldBy("Its spines may be venomous; show a doctor a prick."));
        Assert.False(hazard.IsToldBy("Its spines prick; show a doctor."));
        Assert.False(hazard.IsToldBy("Its spines may be venomous."));
    }

    [Fact]
    public void What_belittles_a_hazard_stands_after_its_own_words()
    {
        var entry = RealContent.Collection.Entries.Single(e => e.Name == "synodontis-eupterus");
        var doubt = "Whether its spines are venomous is doubtful; use your hand, for the doctor can wait.";
        var told = CautionsOf.Entry(entry with { Cautions = [entry.Cautions[0].With(doubt)] }, Hazards);
        Assert.Equal(Hazards.Single(h => h.Name.Value == "catfish-spines").Says, told[0].Text);
        Assert.Equal(doubt, told[^1].Text);
        Assert.Null(told[^1].Kind);
    }

    /// <summary>What can hurt people is for doctors and electricians, what is ill for the vet.</summary>
    [Fact]
    public void Every_hazard_to_people_defers_to_those_who_know()
    {
        var people = Hazards.Where(
            h => h.Kind is not (HazardKind.Outgrowing or HazardKind.Predation or HazardKind.Release));
        Assert.All(people, h =>
            Assert.Matches("doctor|hospital|medical|emergency|vet|electrician|water company", h.Says));
    }

    [Fact]
    public void Every_page_warns_that_a_short_list_is_no_promise()
    {
        var toy = ToySite.Read();
        Assert.Empty(toy.Species("danio-rerio").Cautions);
        Assert.Equal(5, toy.Species("danio-rerio").Everywhere.Count);
        Assert.Equal(5, toy.At<HomeSheet>("papers/sheet-danio-rerio.html").Everywhere.Count);
        var pages = RealSite.Pages.Values.Where(p => p.QuerySelector(".species") is not null).ToList();
        Assert.Equal(RealSite.Entries.Count, pages.Count);
        Assert.All(pages, p => Assert.Contains(
            "does not mean that nothing else can happen", p.Body!.TextContent, StringComparison.Ordinal));
    }
}
