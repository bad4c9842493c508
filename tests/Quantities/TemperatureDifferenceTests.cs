using CareSheets.Quantities;

namespace CareSheets.Tests.Quantities;

public class TemperatureDifferenceTests
{
    // Δ°C = Δ°F ÷ 1.8, exact (NIST SP 811, Appendix B, from memory). With the 32 of the scale it
    // would be −15.6.
    [Fact]
    public void A_swing_of_4_degrees_Fahrenheit_converts_without_the_32()
    {
        Assert.Equal(2.2222, TemperatureDifference.FromFahrenheit(4).InKelvins, 4);
        Assert.Equal(0, TemperatureDifference.FromFahrenheit(0).InKelvins);
        Assert.Equal(18, TemperatureDifference.FromKelvins(10).InFahrenheit, 1e-12);
    }

    [Fact]
    public void A_written_swing_converts_without_the_32()
    {
        var swing = QuantityText.Parse("4 °F", DimensionCatalogue.TemperatureDifference).Value;

        Assert.Equal(2.2222, swing.Low!.Value, 4);
        Assert.Equal(
            "2 °C", QuantityFormat.In(swing, UnitSystem.Metric, Rounding.Downward).Text);
    }

    [Fact]
    public void Fahrenheit_agrees_with_the_reference_library()
    {
        // UnitsNet 5.75.1, TemperatureDelta.
        Assert.All(ReferenceGrid.Between(-100, 100), value =>
            Assert.Equal(
                UnitsNet.TemperatureDelta.FromDegreesFahrenheit(value).Kelvins,
                TemperatureDifference.FromFahrenheit(value).InKelvins,
                1e-9));
    }

    [Fact]
    public void A_swing_is_what_lies_between_two_temperatures() =>
        Assert.Equal(
            10,
            (Temperature.FromFahrenheit(82) - Temperature.FromFahrenheit(72)).InFahrenheit,
            1e-9);
}
