using CareSheets.Commands;
using CareSheets.Names;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Commands;

/// <summary>Species that are to be drafted: where they belong, and what is said where no relative can help.</summary>
public sealed class ArrivalCommandTests
{
    [Theory]
    [InlineData("Danio kyathit", null, "Danionidae")]
    [InlineData("Rineloricaria lanceolata", null, "Loricariidae")] // no entry of the genus; the table of genera has it
    [InlineData("Corydoras trilineatus", "Callichthyidae", "Callichthyidae")]
    [InlineData("Novum novissimum", "Cichlidae", "Cichlidae")]
    public void A_species_is_placed_by_its_genus_or_else_by_its_family(string name, string? family, string placed) =>
        Assert.Equal(placed, Of(name, family).Place?.Family);

    [Theory]
    [InlineData("Potamotrygon motoro", "Potamotrygonidae",
        "No entry is of the family Potamotrygonidae, so no relative here can draft Potamotrygon motoro. " +
        "Write its entry from sources, after any in content/species.")]
    [InlineData("Novum novissimum", "Cichlida", "No entry is of the family Cichlida, so no relative here can draft " +
        "Novum novissimum. Write its entry from sources, after any in content/species. Did you mean Cichlidae?")]
    [InlineData("Novum novissimum", null, "No entry is of the genus Novum. Name its family: --family NAME.")]
    [InlineData("Danio kyathit", "Cichlidae", "The genus Danio is in the family Danionidae here, not in Cichlidae.")]
    public void What_can_t_be_drafted_is_told_and_no_spelling_is_doubted_without_reason(
        string name, string? family, string problem) => Assert.Equal(problem, Of(name, family).Problem);

    [Fact]
    public void A_genus_that_all_have_left_is_told_with_where_they_went()
    {
        var problem = Of("Corydoras trilineatus", null).Problem;
        Assert.StartsWith("All species that were in Corydoras here have moved, to ", problem, StringComparison.Ordinal);
        Assert.EndsWith("name the family: --family Callichthyidae.", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Hazards_and_laws_that_name_it_are_told_although_nobody_can_draft_it()
    {
        var bench = new Workbench(new ContentSettings { Content = Repository.At("content") });
        var collection = bench.ReadCollection()!;
        var told = UndraftedSpecies.Warnings(
            ScientificName.Parse("Potamotrygon motoro")!, "Potamotrygonidae", collection, bench.Law);
        Assert.Contains("\nHAZARD: Its tail sting injects a venom", told, StringComparison.Ordinal);
        Assert.Contains("\nLAW: Potamotrygon motoro: controlled in trade by", told, StringComparison.Ordinal);
        Assert.Equal("", UndraftedSpecies.Warnings(ScientificName.Parse("Novum novum")!, null, collection, bench.Law));
    }

    [Theory]
    [InlineData("Paracheirodon inesi", "Paracheirodon innesi")]
    [InlineData("Melanotaenia boesmani", "Melanotaenia boesemani")]
    [InlineData("Melanotaenia boesemanii", "Melanotaenia boesemani")]
    [InlineData("Cheirodon axelrodii", "Paracheirodon axelrodi")]
    public void A_name_near_to_that_of_an_entry_is_asked_about(string name, string near)
    {
        var question = NearEntries.Question(RealContent.Collection, ScientificName.Parse(name)!);
        Assert.Contains(near, question, StringComparison.Ordinal);
        Assert.EndsWith("say so with --new.", question, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Danio kyathit")]
    [InlineData("Hyphessobrycon columbianus")]
    [InlineData("Hoplisoma trilineatum")]
    [InlineData("Rineloricaria lanceolata")]
    public void A_name_of_its_own_is_not(string name) =>
        Assert.Null(NearEntries.Question(RealContent.Collection, ScientificName.Parse(name)!));

    private static (CareSheets.Relatives.NewPlace? Place, string Problem) Of(string name, string? family) =>
        NewPlaces.Of(RealContent.Collection, ScientificName.Parse(name)!, family);
}
