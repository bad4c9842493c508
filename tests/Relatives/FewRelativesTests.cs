using CareSheets.Collection;
using CareSheets.Relatives;
using CareSheets.Species;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Relatives;

/// <summary>What to do about a value that does not fit, by how many of its genus it was held against.</summary>
public sealed class FewRelativesTests
{
    private static readonly ComparedFigure Hardness = Figure("hardness");

    [Theory]
    [InlineData("brackish mangrove creeks", "clear stream",
        "This one lives in brackish water by its entry, Pseudomugil gertrudae does not, which may be why. ")]
    [InlineData("clear stream", "brackish mangrove creeks",
        "Pseudomugil gertrudae lives in brackish water by its entry, this one does not, which may be why. ")]
    [InlineData("clear stream", "clear river", "")]
    [InlineData("", "brackish mangrove creeks", "")] // where nobody has said, nothing is known to differ
    public void Against_one_of_its_genus_both_are_named_and_the_waters_that_set_them_apart(
        string here, string there, string why) => Assert.Equal(
        "Of its genus only Pseudomugil gertrudae (1–10 °dH) states it, so any of them may be the odd one. " + why +
        "Look at each, correct what is wrong, or, if this is right, say so",
        FewRelatives.Advice(Against(TaxonRank.Genus, Hardness, here, [Entry("pseudomugil-gertrudae", there)])));

    [Fact]
    public void Waters_do_not_explain_a_length() => Assert.DoesNotContain("brackish", FewRelatives.Advice(Against(
        TaxonRank.Genus, Figure("adult.length"), "brackish", [Entry("pseudomugil-gertrudae", "clear stream")])));

    [Theory]
    [InlineData(TaxonRank.Genus, 3)]
    [InlineData(TaxonRank.Family, 1)]
    public void Against_more_of_its_genus_or_a_whole_family_it_is_to_be_corrected(TaxonRank rank, int count) =>
        Assert.Equal("Correct it, or, if it is right, say so", FewRelatives.Advice(Against(
            rank, Hardness, "", [.. Enumerable.Repeat(Entry("pseudomugil-gertrudae", "pool"), count)])));

    private static Outlier Against(TaxonRank rank, ComparedFigure figure, string habitat, Entry[] others)
    {
        var entry = Entry("pseudomugil-furcatus", habitat);
        return new Outlier(
            entry, figure, figure.Own(entry)!, true, 4, 5, 4, 6,
            new Relations(rank, [.. others.Select(o => new Relation(o, figure.Own(o)!))], 90), null, null)
        {
            Middle = 8,
        };
    }

    private static ComparedFigure Figure(string field) =>
        ComparedFigure.All(RealContent.Collection.Figures).Single(f => f.Field == field);

    private static Entry Entry(string name, string habitat)
    {
        var entry = RealContent.Collection.Find(name)!;
        var places = habitat.Length == 0 ? [] : new[] { entry.Origin.Habitats[0].With(habitat) };
        return entry with { Origin = entry.Origin with { Habitats = places } };
    }
}
