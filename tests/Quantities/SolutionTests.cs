using CareSheets.Quantities;

namespace CareSheets.Tests.Quantities;

public class SolutionTests
{
    // UnitsNet 5.75.1, ElectricConductivity and MassConcentration.
    [Fact]
    public void Conductivity_agrees_with_the_reference_library() =>
        Assert.All(ReferenceGrid.Between(0, 60), value =>
        {
            var ours = DimensionCatalogue.Conductivity;
            var perCentimetre = UnitsNet.ElectricConductivity.FromMillisiemensPerCentimeter(value);
            var perMetre = UnitsNet.ElectricConductivity.FromSiemensPerMeter(value / 1000);
            Same(perCentimetre.MicrosiemensPerCentimeter, value, "mS/cm", ours);
            Same(perMetre.MicrosiemensPerCentimeter, value, "mS/m", ours);
        });

    [Fact]
    public void Salinity_agrees_with_the_reference_library() =>
        Assert.All(ReferenceGrid.Between(0, 40_000), value => Same(
            UnitsNet.MassConcentration.FromMilligramsPerLiter(value).GramsPerLiter,
            value, "mg/L", DimensionCatalogue.Salinity));

    // SI prefixes: 1 dS/m = 0.1 S per 100 cm = 1 mS/cm.
    [Fact]
    public void A_decisiemens_per_metre_is_a_millisiemens_per_centimetre() =>
        Assert.Equal(
            DimensionCatalogue.Conductivity.Find("mS/cm")!.ToCanonical(1),
            DimensionCatalogue.Conductivity.Find("dS/m")!.ToCanonical(1));

    private static void Same(double expected, double value, string unit, Dimension dimension) =>
        Assert.Equal(
            expected, dimension.Find(unit)!.ToCanonical(value), 1e-9 * Math.Max(1, expected));
}
