using CareSheets.Collection;
using CareSheets.Housing;

namespace CareSheets.Tests.Housing;

/// <summary>Species against the shop's waters.</summary>
public sealed class SystemFinderTests
{
    private static readonly SpeciesCollection Shop = HousingShop.Read();

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
        var fits = SystemFinder.Find(shop.Find("danio-rerio")!, shop);
        Assert.Equal([Suitability.Fits, Suitability.FitsNot], fits.Select(f => f.Suitability));
    }

    [Fact]
    public void What_is_unknown_is_never_called_fitting()
    {
        var odd = Fits("danio-rerio").Single(f => f.Source.Water.Name == "Odd");
        Assert.Contains(
            odd.Figures, f => f is { Standing: FigureStanding.UnknownOfWater, Declaration.Field: "hardness" });
        var shop = HousingShop.Read(changes: ("danio-rerio", "  hardness: 3–20 °dH\n", ""));
        var soft = SystemFinder.Find(shop.Find("danio-rerio")!, shop).Single(f => f.Source.Water.Name == "Warm");
        Assert.Contains(soft.Figures, f => f.Standing == FigureStanding.UnknownOfSpecies);
        var silent = HousingShop.Read("systems: [{ name: Bare, temperature: 24 °C, hardness: 8 °dH }]\n");
        Assert.Equal(
            [Suitability.FitsAsFarAsKnown],
            SystemFinder.Find(silent.Find("danio-rerio")!, silent).Select(f => f.Suitability));
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
        var fits = SystemFinder.Find(shop.Find("danio-rerio")!, shop);
        Assert.Equal("salinity TooLow 2", string.Join(", ", fits.Single(f => f.Source.Kind == WaterSourceKind.Tap)
            .Failing.Select(f => $"{f.Declaration.Field} {f.Standing} {f.By}")));
        Assert.DoesNotContain(
            fits.Single(f => f.Source.Water.Name == "Odd").Failing, f => f.Declaration.Field == "salinity");
    }

    [Fact]
    public void Oxygen_counts_at_the_height_of_the_shop()
    {
        (string, string, string) fast = ("danio-rerio", "  flow: moderate\n", "  oxygen: very high\n");
        var low = HousingShop.Read(changes: fast);
        var high = HousingShop.Read("altitude: 6000 ft\n" + HousingShop.Waters, fast);
        OxygenInWater At(SpeciesCollection shop) => SystemFinder.Find(shop.Find("danio-rerio")!, shop)[0].Oxygen!;
        Assert.True(At(low).IsMet);
        Assert.False(At(high).IsMet);
        Assert.Equal(8.188, At(low).Attainable.InMilligramsPerLitre, 0.002); // 25.5 °C, between 8.2635 and 8.1136
    }

    private static IReadOnlyList<SystemFit> Fits(string name) => SystemFinder.Find(Shop.Find(name)!, Shop);

    private static string Failures(SystemFit fit)
    {
        var name = fit.Source.Kind == WaterSourceKind.Tap ? "tap" : fit.Source.Water.Name;
        return $"{name}:" + string.Concat(fit.Failing.Select(f =>
            $" {f.Declaration.Field} {f.Standing} {Math.Round(f.By, 1)}"));
    }
}
