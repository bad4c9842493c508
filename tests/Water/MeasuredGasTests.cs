using CareSheets.Quantities;
using CareSheets.Water;
using static CareSheets.Tests.Water.Printed;

namespace CareSheets.Tests.Water;

/// <summary>CO₂ from a keeper's two readings: where they say something, and where they can't both be right.</summary>
public sealed class MeasuredGasTests
{
    /// <summary>
    /// Solubility of CO₂ under 1 atm in all, vapour included (handbook tables, from memory): 1.69 g/L at 20 °C and
    /// 1.45 at 25 °C. Vapour of water takes 0.023 and 0.031 atm of it. Good to 2 %.
    /// </summary>
    [Theory]
    [InlineData(20, 0.023, 1690)]
    [InlineData(25, 0.031, 1450)]
    public void Water_takes_up_as_much_as_handbooks_say(double celsius, double vapour, double milligrams) =>
        Assert.Equal(
            milligrams, MeasuredGas.UnderPureGas(Warm(celsius)).Value.InMilligramsPerLitre * (1 - vapour),
            0.02 * milligrams);

    [Theory]
    [InlineData(0, 6.8, RefusalReason.OtherIonsDecide)]
    [InlineData(0.4, 7, RefusalReason.OtherIonsDecide)]
    [InlineData(20, 5, RefusalReason.OtherIonsDecide)]
    [InlineData(20, 5.6, RefusalReason.ReadingsApart)]
    [InlineData(1, 11, RefusalReason.NoSuchWater)]
    public void Readings_that_cannot_be_are_refused(double degrees, double pH, RefusalReason reason) =>
        Assert.Equal(reason, MeasuredGas.In(KH(degrees), PH(pH), Warm(25)).Refusal?.Reason);

    [Theory]
    [InlineData(0.5, 5.5)]
    [InlineData(4, 7)]
    [InlineData(12, 6.2)]
    public void Elsewhere_it_is_the_sum_of_the_carbonates(double degrees, double pH) => Assert.Equal(
        CarbonateWater.Of(KH(degrees), PH(pH), Warm(25)).Value.CarbonDioxide,
        MeasuredGas.In(KH(degrees), PH(pH), Warm(25)).Value.CarbonDioxide);

    [Fact]
    public void A_height_beyond_the_formula_is_refused_as_a_height()
    {
        var refusal = OxygenSaturation.At(Warm(20), Altitude.FromMetres(9000)).Refusal!;
        Assert.Equal((DimensionCatalogue.Altitude, 9000.0), (refusal.Of, refusal.Given));
        Assert.Equal(0.5, StandardAtmosphere.At(Altitude.FromMetres(refusal.High!.Value)).InAtmospheres, 1e-9);
        Assert.Equal(
            OxygenSaturation.At(Warm(20), StandardAtmosphere.At(Altitude.FromMetres(1500))).Value,
            OxygenSaturation.At(Warm(20), Altitude.FromMetres(1500)).Value);
    }
}
