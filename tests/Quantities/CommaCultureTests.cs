using System.Globalization;
using CareSheets.Quantities;

namespace CareSheets.Tests.Quantities;

/// <summary>Everything again where the machine writes 22,5 and 1.000.</summary>
[Collection("comma culture")]
public sealed class CommaCultureTests : IDisposable
{
    private readonly CultureInfo _before = CultureInfo.CurrentCulture;

    public CommaCultureTests() => CultureInfo.CurrentCulture = new CultureInfo("de-DE");

    public void Dispose() => CultureInfo.CurrentCulture = _before;

    [Fact]
    public void The_machine_really_writes_commas() =>
        Assert.Equal("22,5", 22.5.ToString(CultureInfo.CurrentCulture));

    [Fact]
    public void A_point_is_read_as_a_decimal_point()
    {
        var range = QuantityText.Parse("22.5–25.125 °C", DimensionCatalogue.Temperature).Value;

        Assert.Equal((22.5, 25.125), (range.Low, range.High));
        Assert.Equal("22.5–25.125 °C", range.Text);
    }

    [Fact]
    public void A_comma_is_still_a_problem() =>
        Assert.Equal(
            QuantityProblemKind.CommaDecimal,
            QuantityText.Parse("22,5 °C", DimensionCatalogue.Temperature).Problem.Kind);

    [Fact]
    public void Shown_figures_have_points()
    {
        var range = QuantityText.Parse("72–78 °F", DimensionCatalogue.Temperature).Value;

        Assert.Equal(
            "22.5–25.5 °C", QuantityFormat.In(range, UnitSystem.Metric, Rounding.Inward).Text);
        Assert.Equal("22.5 °C", Temperature.FromCelsius(22.5).ToString());
        Assert.Equal(
            "[1.5 cm, …]", Range<Length>.AtLeast(Length.FromCentimetres(1.5)).ToString());
    }

    [Fact]
    public void Limits_in_problems_have_points() =>
        Assert.Equal(
            "−273.15 °C",
            QuantityText.Parse("-300 °C", DimensionCatalogue.Temperature).Problem.Values["limit"]);
}
