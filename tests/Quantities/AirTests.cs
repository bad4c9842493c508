using CareSheets.Quantities;

namespace CareSheets.Tests.Quantities;

public class AirTests
{
    // UnitsNet 5.75.1, Pressure.
    [Fact]
    public void Pressure_agrees_with_the_reference_library() =>
        Assert.All(ReferenceGrid.Between(0, 1100), value =>
        {
            var ours = DimensionCatalogue.Pressure;
            Same(UnitsNet.Pressure.FromHectopascals(value).Kilopascals, value, "hPa", ours, 1e-9);
            Same(UnitsNet.Pressure.FromMillibars(value).Kilopascals, value, "mbar", ours, 1e-9);
            Same(UnitsNet.Pressure.FromAtmospheres(value).Kilopascals, value, "atm", ours, 1e-9);
            Same(UnitsNet.Pressure.FromMillimetersOfMercury(value).Kilopascals, value, "mmHg", ours, 1e-6);
            Same(UnitsNet.Pressure.FromInchesOfMercury(value).Kilopascals, value, "inHg", ours, 1e-6);
        });

    // NIST SP 811, Appendix B (from memory): 29.92 inHg is 0.999958 atm.
    [Fact]
    public void The_standard_barometer_reads_one_atmosphere() => Assert.Equal(
        0.999958,
        Pressure.FromKilopascals(DimensionCatalogue.Pressure.Find("inHg")!.ToCanonical(29.92)).InAtmospheres, 1e-6);

    // UnitsNet 5.75.1, Length, Duration, Ratio and MassConcentration.
    [Fact]
    public void Height_time_share_and_content_agree_with_the_reference_library() =>
        Assert.All(ReferenceGrid.Between(0, 100), value =>
        {
            Same(UnitsNet.Length.FromFeet(value).Meters, value, "ft", DimensionCatalogue.Altitude, 1e-9);
            Same(UnitsNet.Duration.FromMinutes(value).Hours, value, "min", DimensionCatalogue.Elapsed, 1e-9);
            Same(UnitsNet.Duration.FromDays(value).Hours, value, "d", DimensionCatalogue.Elapsed, 1e-9);
            Same(UnitsNet.Ratio.FromPercent(value).Percent, value, "%", DimensionCatalogue.Share, 1e-9);
            Same(
                UnitsNet.MassConcentration.FromMilligramsPerLiter(value).MilligramsPerLiter, value, "mg/L",
                DimensionCatalogue.Concentration, 1e-9);
        });

    // Molar masses 14.0067, 17.0305 and 18.0385 g/mol: 1.216 and 1.288 as kits' leaflets print them.
    [Fact]
    public void Ammonia_is_told_by_its_basis()
    {
        var ours = DimensionCatalogue.Ammonia;
        Assert.Equal(1.216, 1 / ours.Find("mg/L as NH3")!.ToCanonical(1), 5e-4);
        Assert.Equal(1.288, 1 / ours.Find("mg/L NH4")!.ToCanonical(1), 5e-4);
        Assert.Equal(1, ours.Find("ppm as N")!.ToCanonical(1));
    }

    [Fact]
    public void The_level_of_the_sea_is_no_altitude_and_the_moon_is_none() => Assert.Multiple(
        () => Assert.Equal(default, Altitude.FromMetres(0)),
        () => Assert.Throws<ArgumentOutOfRangeException>(() => Altitude.FromMetres(9001)),
        () => Assert.Throws<ArgumentOutOfRangeException>(() => Share.FromPercent(101)),
        () => Assert.Throws<ArgumentOutOfRangeException>(() => Ammonia.FromMilligramsOfNitrogen(double.NaN)));

    private static void Same(double expected, double value, string unit, Dimension dimension, double relative) =>
        Assert.Equal(expected, dimension.Find(unit)!.ToCanonical(value), relative * Math.Max(1, expected));
}
