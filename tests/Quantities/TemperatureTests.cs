using CareSheets.Quantities;

namespace CareSheets.Tests.Quantities;

public class TemperatureTests
{
    // Freezing and boiling point, the two fixed points of Fahrenheit's scale as now defined, and
    // where both scales meet: °C = (°F − 32) ÷ 1.8, exact (NIST SP 811, Appendix B, from memory).
    // 76 °F = 24.4444 °C and 72–82 °F = 22.2222–27.7778 °C follow to four decimals.
    [Theory]
    [InlineData(32, 0)]
    [InlineData(212, 100)]
    [InlineData(-40, -40)]
    [InlineData(77, 25)]
    [InlineData(76, 24.4444)]
    [InlineData(72, 22.2222)]
    [InlineData(82, 27.7778)]
    public void Fahrenheit_agrees_with_the_definition(double fahrenheit, double celsius)
    {
        Assert.Equal(celsius, Temperature.FromFahrenheit(fahrenheit).InCelsius, 4);
        Assert.Equal(fahrenheit, Temperature.FromCelsius(celsius).InFahrenheit, 3);
    }

    [Fact]
    public void Fahrenheit_agrees_with_the_reference_library()
    {
        // UnitsNet 5.75.1, Temperature.
        Assert.All(ReferenceGrid.Between(-100, 250), value =>
            Assert.Equal(
                UnitsNet.Temperature.FromDegreesFahrenheit(value).DegreesCelsius,
                Temperature.FromFahrenheit(value).InCelsius,
                1e-9));
    }

    // Absolute zero: −273.15 °C by the definition of the Celsius scale (SI brochure, from memory).
    [Fact]
    public void Absolute_zero_exists_and_nothing_is_colder()
    {
        Assert.Equal(-273.15, Temperature.FromCelsius(-273.15).InCelsius);
        Assert.Equal(-273.15, Temperature.FromFahrenheit(-459.67).InCelsius, 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => Temperature.FromCelsius(-273.16));
        Assert.Throws<ArgumentOutOfRangeException>(() => Temperature.FromFahrenheit(-460));
    }
}
