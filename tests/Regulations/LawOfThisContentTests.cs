using CareSheets.Commands;
using CareSheets.Names;
using CareSheets.Regulations;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Regulations;

/// <summary>
/// The lists of content/regulations as written down, held against what the laws themselves were
/// reported to say: 50 CFR 16.13 as of 30 November 2010; 14 CCR 671; Implementing Regulations (EU)
/// 2019/1262, 2022/1203 and 2025/1422; CITES after its 19th meeting (2022). What stands there from memory is
/// from memory here too.
/// </summary>
public sealed class LawOfThisContentTests
{
    private static readonly Lazy<LawBook> Law = new(() =>
    {
        var bench = new Workbench(new ContentSettings { Content = Repository.At("content") });
        Assert.NotNull(bench.ReadCollection());
        return bench.Law;
    });

    [Theory]
    [InlineData("US", "Clarias batrachus", RegulationEffect.Prohibited)]
    [InlineData("US-NY", "Ophicephalus argus", RegulationEffect.Prohibited)]
    [InlineData("US", "Parachanna obscura", RegulationEffect.Prohibited)]
    [InlineData("US-CA", "Pygocentrus nattereri", RegulationEffect.Prohibited)]
    [InlineData("US-CA", "Lepisosteus oculatus", RegulationEffect.Prohibited)]
    [InlineData("US-CA", "Hoplias malabaricus", RegulationEffect.Prohibited)]
    [InlineData("DE", "Gambusia affinis", RegulationEffect.Prohibited)]
    [InlineData("NL", "Misgurnus anguillicaudatus", RegulationEffect.Prohibited)]
    [InlineData("FR", "Lepomis gibbosus", RegulationEffect.Prohibited)]
    [InlineData("GB-ENG", "Lepomis gibbosus", RegulationEffect.Prohibited)]
    [InlineData("GB-NIR", "Channa argus", RegulationEffect.Prohibited)]
    [InlineData("US", "Silurus glanis", RegulationEffect.Prohibited)]
    [InlineData("US-CA", "Potamotrygon motoro", RegulationEffect.Prohibited)]
    [InlineData("US-NV", "Pygocentrus nattereri", RegulationEffect.Prohibited)]
    [InlineData("GB-ENG", "Scleropages formosus", RegulationEffect.Trade)]
    [InlineData("GB-ENG", "Scleropages inscriptus", RegulationEffect.Trade)]
    [InlineData("GB-ENG", "Paratrygon aiereba", RegulationEffect.Trade)]
    [InlineData("BR", "Hypancistrus zebra", RegulationEffect.Trade)]
    [InlineData("CH", "Potamotrygon leopoldi", RegulationEffect.Permit)]
    public void Listed_fishes_are_found_by_a_bare_name(string place, string name, RegulationEffect effect) =>
        Assert.Equal(effect, new RegulationFinder(Law.Value.Lists, place).Of(ScientificName.Parse(name)!)
            .Strictest?.Rule?.Effect);

    [Fact]
    public void Appendix_two_goes_before_appendix_three() =>
        Assert.Equal("Appendix II", new RegulationFinder(Law.Value.Lists, "BR")
            .Of(ScientificName.Parse("Potamotrygon leopoldi")!).Strictest!.Rule!.Clause);

    [Fact]
    public void In_England_nothing_is_ever_clear_while_the_names_of_its_order_are_not_here()
    {
        var finder = new RegulationFinder(Law.Value.Lists, "GB-ENG");
        Assert.All(RealContent.Collection.Entries, entry => Assert.Contains(
            finder.Of(entry).Of(OutcomeKind.NotChecked), o => o.List.Key == "england-fish-order"));
    }

    [Fact]
    public void Every_list_says_where_it_is_from_and_no_day_lies_in_the_future()
    {
        Assert.True(Law.Value.Lists.Count >= 10);
        Assert.All(Law.Value.Lists, list => Assert.True(
            list.Source.Length > 10 && (list.Checked?.Value ?? default) < new DateOnly(2026, 11, 26), list.Key));
    }

    [Theory]
    [InlineData("DE", "German Animal Welfare Act")]
    [InlineData("GB-ENG", "English regulations on activities involving animals, 2018")]
    [InlineData("US-CA", "California Penal Code")]
    public void Duties_of_a_place_are_found(string place, string title) =>
        Assert.Equal(title, Assert.Single(
            Law.Value.Duties, d => Jurisdiction.Binds(d.Applies, place)).Title.Value);
}
