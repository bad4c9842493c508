using CareSheets.Quantities;
using CareSheets.Water;

namespace CareSheets.Tests.Water;

/// <summary>Classes of hardness by scheme, hardness from ions, solids from conductivity.</summary>
public sealed class HardnessSchemeTests
{
    // US Geological Survey: 0–60, 61–120, 121–180, above 180 mg/L, as quoted in a journal's table. What lies
    // between two whole figures is rounded first: our decision.
    [Theory]
    [InlineData(0, "soft")]
    [InlineData(60, "soft")]
    [InlineData(60.4, "soft")]
    [InlineData(61, "moderately_hard")]
    [InlineData(120, "moderately_hard")]
    [InlineData(121, "hard")]
    [InlineData(180, "hard")]
    [InlineData(181, "very_hard")]
    [InlineData(2000, "very_hard")]
    public void The_survey_s_classes_meet_at_their_ends(double milligrams, string word) => Assert.Equal(
        word, HardnessScheme.Usgs.ClassOf(GeneralHardness.FromMilligramsPerLitre(milligrams)).Word);

    [Theory]
    [InlineData(1.49, "soft")]
    [InlineData(1.5, "middling")]
    [InlineData(2.5, "middling")]
    [InlineData(2.51, "hard")]
    public void The_German_classes_meet_at_their_ends(double millimoles, string word) =>
        Assert.Equal(word, HardnessScheme.German.ClassOf(GeneralHardness.FromMillimoles(millimoles)).Word);

    [Fact]
    public void One_water_has_different_names_in_different_schemes()
    {
        var water = GeneralHardness.FromMilligramsPerLitre(140);
        Assert.Equal(
            ["hard", "moderately_hard", "soft"], HardnessScheme.All.Select(s => s.ClassOf(water).Word));
        Assert.All(HardnessScheme.All, s => Assert.NotEqual("", s.Source));
    }

    // From molar masses: 2.497 mg for each mg of calcium, 4.118 for each of magnesium.
    [Fact]
    public void Hardness_follows_from_ions()
    {
        Assert.Equal(2.497, Hardness(1, 0), 5e-4);
        Assert.Equal(4.118, Hardness(0, 1), 5e-4);
        Assert.Equal(17.848, Hardness(7.147, 0), 2e-3); // 1 °dH is 7.147 mg/L of calcium
    }

    // 0.55 to 0.75 for most natural waters: 300 µS/cm is 165 to 225 mg/L.
    [Fact]
    public void Solids_are_a_span()
    {
        var solids = Dissolved.SolidsOf(Conductivity.FromMicrosiemensPerCentimetre(300));
        Assert.Equal(165, solids.Min!.Value.InMilligramsPerLitre, 1e-9);
        Assert.Equal(225, solids.Max!.Value.InMilligramsPerLitre, 1e-9);
    }

    private static double Hardness(double calcium, double magnesium) => Dissolved.HardnessOf(
        Concentration.FromMilligramsPerLitre(calcium),
        Concentration.FromMilligramsPerLitre(magnesium)).InMilligramsPerLitre;
}
