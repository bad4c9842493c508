using CareSheets.Collection;
using CareSheets.Housing;
using CareSheets.Tankmates;

namespace CareSheets.Tests.Housing;

/// <summary>Species against the shop's waters.</summary>
public sealed class SystemFinderTests
{
    private static readonly SpeciesCollection Shop = HousingShop.Read();
    private static readonly AskRelatives Nobody = (_, _) => null;

    // The zebra danio of the toy is kept at 18–27 °C, pH 6.5–8.0, 3–20 °dH.
    [Fact]
    public void Each_water_is_held_against_the_keep_ranges() => Assert.Equal(
        [
            "Soft: ph TooLow 0.3", "Hard: hardness TooHigh 35.7", "Warm: temperature TooHigh 2.5",
            "Odd: salinity TooHigh 2.5", "tap:",
        ],
        Fits("danio-rerio").Select(Failures));

    [Fact]
    public void A_water_in_which_everything_fits_fits()
    {
        var shop = HousingShop.Read("""
            systems:
              - { name: Middle, temperature: 24–26 °C, ph: 7.0, hardness: 8 °dH }
              - { name: Wide, temperature: 24–28 °C, ph: 7.0, hardness: 8 °dH }

            """);
        var fits = SystemFinder.Find(shop.Find("danio-rerio")!, shop, Nobody);
        Assert.Equal([Suitability.Fits, Suitability.FitsNot], fits.Select(f => f.Suitability));
    }

    [Fact]
    public void What_is_unknown_is_never_called_fitting()
    {
        var odd = Fits("danio-rerio").Single(f => f.Source.Water.Name == "Odd");
        Assert.Contains(
            odd.Figures, f => f is { Standing: FigureStanding.UnknownOfWater, Declaration.Field: "hardness" });
        var shop = HousingShop.Read(changes: ("danio-rerio", "  hardness: 3–20 °dH\n", ""));
        var soft = SystemFinder.Find(shop.Find("danio-rerio")!, shop, Nobody)
            .Single(f => f.Source.Water.Name == "Warm");
        Assert.Contains(soft.Figures, f => f.Standing == FigureStanding.UnknownOfSpecies);
        var silent = HousingShop.Read("systems: [{ name: Bare, temperature: 24 °C, hardness: 8 °dH }]\n");
        Assert.Equal(
            [Suitability.FitsAsFarAsKnown],
            SystemFinder.Find(silent.Find("danio-rerio")!, silent, Nobody).Select(f => f.Suitability));
    }

    [Fact]
    public void The_tap_is_warmed_first_so_its_temperature_does_not_count()
    {
        var tap = Fits("danio-rerio")[^1];
        Assert.Equal(WaterSourceKind.Tap, tap.Source.Kind);
        Assert.Contains(tap.Figures, f => f.Standing == FigureStanding.LeftToHeater);
        Assert.Equal(Suitability.Fits, tap.Suitability);
        Assert.Null(tap.Oxygen);
    }

    [Fact]
    public void A_fish_that_needs_salt_does_not_fit_fresh_water()
    {
        var shop = HousingShop.Read(changes: ("danio-rerio", "  flow: moderate\n", "  salinity: 2–10 g/L\n"));
        var fits = SystemFinder.Find(shop.Find("danio-rerio")!, shop, Nobody);
        Assert.Equal("salinity TooLow 2", string.Join(", ", fits.Single(f => f.Source.Kind == WaterSourceKind.Tap)
            .Failing.Select(f => $"{f.Declaration.Field} {f.Standing} {f.By}")));
        Assert.DoesNotContain(
            fits.Single(f => f.Source.Water.Name == "Odd").Failing, f => f.Declaration.Field == "salinity");
    }

    [Fact]
    public void A_silent_relative_of_a_fish_that_needs_salt_is_not_taken_for_one_of_fresh_water()
    {
        var shop = HousingShop.Read(changes: ("danio-margaritatus", "  hardness: 4–18 °dH\n",
            "  hardness: 4–18 °dH\n  salinity: 2–10 g/L\n"));
        var fits = SystemFinder.Find(shop.Find("danio-rerio")!, shop, Nobody);
        Assert.All(fits, fit => Assert.Contains(
            fit.Figures, f => f is { Declaration.Field: "salinity", Standing: FigureStanding.UnknownOfSpecies }));
        Assert.DoesNotContain(fits, fit => fit.Suitability == Suitability.Fits);
        Assert.Null(Tankmate.Of(shop.Find("danio-rerio")!, shop, Nobody)
            .Water.Single(w => w.Declaration.Field == "salinity").Keep);
    }

    [Theory]
    [InlineData(4, 8, FigureStanding.UnknownOfSpecies, Suitability.FitsAsFarAsKnown)]
    [InlineData(1, 2, FigureStanding.RelativesApart, Suitability.FitsNot)]
    public void Relatives_speak_against_a_water_and_never_for_it(
        double low, double high, FigureStanding standing, Suitability suitability)
    {
        var shop = HousingShop.Read(
            "systems: [{ name: Middle, temperature: 24 °C, ph: 7.0, hardness: 5.6 °dH }]\n",
            ("danio-rerio", "  hardness: 3–20 °dH\n", ""));
        AskRelatives ask = (_, range) => range.Field == "hardness"
            ? new SuggestedRange(low * 17.848, high * 17.848) : null;
        var fit = Assert.Single(SystemFinder.Find(shop.Find("danio-rerio")!, shop, ask));
        Assert.Equal((standing, suitability), (
            fit.Figures.Single(f => f.Declaration.Field == "hardness").Standing, fit.Suitability));
    }

    [Fact]
    public void Oxygen_counts_at_the_height_of_the_shop()
    {
        (string, string, string) fast = ("danio-rerio", "  flow: moderate\n", "  oxygen: very high\n");
        var low = HousingShop.Read(changes: fast);
        var high = HousingShop.Read("altitude: 6000 ft\n" + HousingShop.Waters, fast);
        OxygenInWater At(SpeciesCollection shop) =>
            SystemFinder.Find(shop.Find("danio-rerio")!, shop, Nobody)[0].Oxygen!;
        Assert.True(At(low).IsMet);
        Assert.False(At(high).IsMet);
        Assert.Equal(8.188, At(low).Attainable.InMilligramsPerLitre, 0.002); // 25.5 °C, between 8.2635 and 8.1136
    }

    private static IReadOnlyList<SystemFit> Fits(string name) => SystemFinder.Find(Shop.Find(name)!, Shop, Nobody);

    private static string Failures(SystemFit fit)
    {
        var name = fit.Source.Kind == WaterSourceKind.Tap ? "tap" : fit.Source.Water.Name;
        return $"{name}:" + string.Concat(fit.Failing.Select(f =>
            $" {f.Declaration.Field} {f.Standing} {Math.Round(f.By, 1)}"));
    }
}
