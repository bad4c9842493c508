using CareSheets.Quantities;

namespace CareSheets.Tests.Quantities;

public class QuantityFormatTests
{
    [Theory]
    [InlineData("72–78 °F", "temperature")]
    [InlineData("71.95–78.0 °F", "temperature")]
    [InlineData("> 40 ppm CaCO3", "generalHardness")]
    [InlineData("6.85–7.10", "acidity")]
    [InlineData("19.5 US gal", "volume")]
    public void The_writers_own_figures_stay_as_typed(string typed, string dimension)
    {
        var range = Parse(typed, dimension);

        Assert.Equal(
            new ShownRange(range.Text, IsApproximate: false),
            QuantityFormat.In(range, UnitSystem.US, Rounding.Inward));
    }

    // Exact conversions and the steps people use: 0.5 °C, 1 °F, 5 ppm (common practice, no source).
    [Theory]
    [InlineData("72–78 °F", "temperature", UnitSystem.Metric, "22.5–25.5 °C")] // 22.22, 25.56
    [InlineData("72–82 °F", "temperature", UnitSystem.Metric, "22.5–27.5 °C")] // 22.22, 27.78
    [InlineData("20–25 °C", "temperature", UnitSystem.US, "68–77 °F")] // exact
    [InlineData("22–26 °C", "temperature", UnitSystem.US, "72–78 °F")] // 71.6, 78.8
    [InlineData("> 22 °C", "temperature", UnitSystem.US, "> 72 °F")]
    [InlineData("≤ 22 °C", "temperature", UnitSystem.US, "≤ 71 °F")]
    [InlineData("24–24.2 °C", "temperature", UnitSystem.US, "75.2–75.5 °F")] // 75.2, 75.56
    [InlineData("4–18 °dH", "generalHardness", UnitSystem.US, "75–320 ppm CaCO₃")] // 71.4, 321.3
    [InlineData("10–20 °fH", "generalHardness", UnitSystem.Metric, "6–11 °dH")] // 5.60, 11.2
    public void Ranges_to_keep_an_animal_in_are_rounded_inward(
        string typed, string dimension, UnitSystem system, string shown) =>
        Assert.Equal(
            new ShownRange(shown, IsApproximate: false),
            QuantityFormat.In(Parse(typed, dimension), system, Rounding.Inward));

    [Theory]
    [InlineData("2.5 cm TL", UnitSystem.US, "1 in TL")] // 0.984
    [InlineData("8 mm SL", UnitSystem.US, "0.4 in SL")] // 0.315
    [InlineData("4 cm TL", UnitSystem.US, "1.6 in TL")] // 1.575
    [InlineData("10 cm TL", UnitSystem.US, "4 in TL")] // 3.937
    [InlineData("12 cm TL", UnitSystem.US, "4.8 in TL")] // 4.724
    [InlineData("18 cm TL", UnitSystem.US, "7.1 in TL")] // 7.087
    [InlineData("35 cm TL", UnitSystem.US, "14 in TL")] // 13.78
    [InlineData("3 in SL", UnitSystem.Metric, "8 cm SL")] // 7.62
    [InlineData("10 in DW", UnitSystem.Metric, "26 cm DW")] // 25.4
    public void Sizes_of_animals_are_rounded_upward(
        string typed, UnitSystem system, string shown) =>
        Assert.Equal(
            new ShownRange(shown, IsApproximate: false),
            QuantityFormat.In(
                QuantityText.Parse(typed, DimensionCatalogue.Length, true).Value,
                system, Rounding.Upward));

    /// <summary>A grown fish is rounded up and one as sold to the nearest, on pages that lead to each other.</summary>
    [Fact]
    public void Small_fishes_are_told_the_same_upward_and_to_the_nearest_within_a_tenth_of_an_inch()
    {
        for (var halves = 2; halves < 20; halves++)
        {
            var length = Range<Length>.Exactly(Length.FromCentimetres(halves / 2.0));
            var texts = new[] { Rounding.Upward, Rounding.Nearest }
                .Select(r => QuantityFormat.Computed(length, UnitSystem.US, r).Text).ToList();
            var inches = texts.ConvertAll(t => Parse(t, "length").Low!.Value / 2.54);
            Assert.InRange(inches[0] - inches[1], -1e-9, 0.1 + 1e-9);
            Assert.InRange(inches[0] - halves / 5.08, -1e-9, 0.1 + 1e-9);
        }
    }

    [Theory]
    [InlineData("45 L", UnitSystem.US, "12 US gal")] // 11.89
    [InlineData("200 L", UnitSystem.US, "55 US gal")] // 52.8
    [InlineData("20 US gal", UnitSystem.Metric, "80 L")] // 75.7
    [InlineData("4 US gal", UnitSystem.Metric, "16 L")] // 15.14
    [InlineData("10 imp gal", UnitSystem.Metric, "50 L")] // 45.46
    [InlineData("10 imp gal", UnitSystem.US, "13 US gal")] // 12.009
    public void Sizes_of_tanks_are_rounded_upward(string typed, UnitSystem system, string shown) =>
        Assert.Equal(
            shown,
            QuantityFormat.In(Parse(typed, "volume"), system, Rounding.Upward).Text);

    [Theory]
    [InlineData("24 °C", "75 °F", true)] // 75.2
    [InlineData("25 °C", "77 °F", false)] // exact
    [InlineData("22 °C", "72 °F", true)] // 71.6
    public void One_figure_goes_to_the_nearest_step_and_says_so_unless_exact(
        string typed, string shown, bool isApproximate) =>
        Assert.Equal(
            new ShownRange(shown, isApproximate),
            QuantityFormat.In(Parse(typed, "temperature"), UnitSystem.US, Rounding.Inward));

    [Fact]
    public void A_swing_is_rounded_down_and_never_to_nothing()
    {
        Assert.Equal("2 °C", Shown("4 °F", "temperatureDifference", Rounding.Downward));
        Assert.Equal("0.5 °C", Shown("1 °F", "temperatureDifference", Rounding.Downward));
        Assert.Equal("0.05 °C", Shown("0.1 °F", "temperatureDifference", Rounding.Downward));
        Assert.Equal("0 °C", Shown("32 °F", "temperature", Rounding.Downward));
    }

    [Fact]
    public void Conversion_noise_does_not_push_a_figure_to_the_next_step()
    {
        for (var fahrenheit = -40; fahrenheit <= 212; fahrenheit++)
        {
            var range = Range<Temperature>.Between(
                Temperature.FromFahrenheit(fahrenheit), Temperature.FromFahrenheit(fahrenheit + 1));
            var typed = $"{fahrenheit}–{fahrenheit + 1} °F".Replace('-', '−');
            foreach (var rounding in Enum.GetValues<Rounding>())
            {
                var shown = QuantityFormat.Computed(range, UnitSystem.US, rounding);
                Assert.Equal(new ShownRange(typed, IsApproximate: false), shown);
            }
        }
    }

    [Fact]
    public void A_computed_range_without_an_end_has_a_comparison_sign() =>
        Assert.Equal(
            "≥ 20 °C",
            QuantityFormat.Computed(
                Range<Temperature>.AtLeast(Temperature.FromCelsius(19.7)),
                UnitSystem.Metric, Rounding.Inward).Text);

    [Fact]
    public void A_computed_range_without_ends_shows_nothing() =>
        Assert.Equal(
            new ShownRange("", IsApproximate: false),
            QuantityFormat.Computed(default(Range<Length>), UnitSystem.US, Rounding.Upward));

    /// <summary>2.3 cm is told as 2.5 cm; that, and not what lies behind it, is 1 in (0.984).</summary>
    [Fact]
    public void A_second_system_translates_what_the_first_shows()
    {
        var (low, high) = QuantityFormat.Tidied(
            DimensionCatalogue.Length, 2.3, null, UnitSystem.Metric, Rounding.Upward);
        Assert.Equal((2.5, null), (low, high));
        Assert.Equal("≥ 1 in", QuantityFormat.Computed(
            DimensionCatalogue.Length, low, high, UnitSystem.US, Rounding.Upward).Text);
    }

    private static string Shown(string typed, string dimension, Rounding rounding) =>
        QuantityFormat.In(Parse(typed, dimension), UnitSystem.Metric, rounding).Text;

    private static StatedRange Parse(string typed, string dimension) =>
        QuantityText.Parse(typed, DimensionCatalogue.Find(dimension)!).Value;
}
