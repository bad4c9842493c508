using CareSheets.Quantities;

namespace CareSheets.Tests.Quantities;

public class QuantityTextTests
{
    [Theory]
    [InlineData("72–78 °F", "72–78 °F")]
    [InlineData("22-26 C", "22–26 °C")]
    [InlineData("22 - 26°C", "22–26 °C")]
    [InlineData("22—26 ℃", "22–26 °C")]
    [InlineData("22−26 ºC", "22–26 °C")]
    [InlineData("22 to 26 °C", "22–26 °C")]
    [InlineData("22 °C to 26 °C", "22–26 °C")]
    [InlineData("22C-26C", "22–26 °C")]
    [InlineData("  24.50 °C\t", "24.50 °C")]
    [InlineData("24\u00A0°C", "24 °C")]
    [InlineData("024 deg C", "24 °C")]
    [InlineData("24–24.0 °C", "24 °C")]
    [InlineData("-5 – -2 °C", "−5–−2 °C")]
    [InlineData("−5–−2 °C", "−5–−2 °C")]
    [InlineData(">22 °C", "> 22 °C")]
    [InlineData(">= 22 °C", "≥ 22 °C")]
    [InlineData("≤ 22 °C", "≤ 22 °C")]
    [InlineData("< 22 °C", "< 22 °C")]
    [InlineData("-0 °C", "0 °C")]
    public void A_temperature_is_read_as_people_write_it(string typed, string tidy) =>
        Reads(typed, tidy, DimensionCatalogue.Temperature);

    [Theory]
    [InlineData("6.5", "6.5")]
    [InlineData("pH 6.5–7", "6.5–7")]
    [InlineData("ph6.5-7.0", "6.5–7.0")]
    [InlineData("6.5–7 pH", "6.5–7")]
    [InlineData("pH > 6.5", "> 6.5")]
    [InlineData("> pH 6.5", "> 6.5")]
    public void A_pH_needs_no_unit_and_may_have_it_on_either_side(string typed, string tidy) =>
        Reads(typed, tidy, DimensionCatalogue.Acidity);

    [Theory]
    [InlineData("> 5 °dH", "> 5 °dH")]
    [InlineData("4–18 dGH", "4–18 °dH")]
    [InlineData("100-200 mg/l as CaCO₃", "100–200 mg/L CaCO₃")]
    [InlineData("100 ppm CaCO3–200 ppm CaCO3", "100–200 ppm CaCO₃")]
    public void Hardness_is_read_with_the_3_of_CaCO3_in_its_unit(string typed, string tidy) =>
        Reads(typed, tidy, DimensionCatalogue.GeneralHardness);

    [Theory]
    [InlineData("3 in SL", "3 in SL")]
    [InlineData("3\" SL", "3 in SL")]
    [InlineData("3–4 in. TL", "3–4 in TL")]
    [InlineData("3 in tl – 4 in TL", "3–4 in TL")]
    [InlineData(".5 in DW", "0.5 in DW")]
    public void A_length_of_an_animal_states_its_basis(string typed, string tidy) =>
        Reads(typed, tidy, DimensionCatalogue.Length, basisRequired: true);

    [Theory]
    [InlineData("20 US gal", "20 US gal")]
    [InlineData("20 US-gal - 30 US-gal", "20–30 US gal")]
    [InlineData("20 imp. gal.", "20 imp gal")]
    [InlineData("75 litres", "75 L")]
    public void A_volume_names_its_gallon(string typed, string tidy) =>
        Reads(typed, tidy, DimensionCatalogue.Volume);

    [Fact]
    public void Everything_written_is_kept()
    {
        var range = QuantityText.Parse(" 3 - 4 in SL ", DimensionCatalogue.Length, true).Value;

        Assert.Equal("3 - 4 in SL", range.Typed);
        Assert.Equal("inch", range.Unit.Key);
        Assert.Equal(LengthBasis.Standard, range.Basis);
        Assert.Equal(7.62, range.Low!.Value, 1e-12);
        Assert.Equal(10.16, range.High!.Value, 1e-12);
        Assert.False(range.IsSingle);
    }

    [Fact]
    public void A_comparison_sign_leaves_one_end_open()
    {
        var above = QuantityText.Parse("> 5 °dH", DimensionCatalogue.GeneralHardness).Value;
        var below = QuantityText.Parse("≤ 7", DimensionCatalogue.Acidity).Value;

        Assert.True(above is { Low: not null, High: null, Bound: Bound.Above });
        Assert.True(below is { Low: null, High: 7, Bound: Bound.AtOrBelow });
        Assert.Equal(Range<Acidity>.AtMost(Acidity.FromPH(7)), below.As<Acidity>());
        Assert.Equal(
            Range<GeneralHardness>.AtLeast(GeneralHardness.FromGermanDegrees(5)),
            above.As<GeneralHardness>());
    }

    [Fact]
    public void A_single_figure_is_a_range_without_width()
    {
        var range = QuantityText.Parse("24 °C", DimensionCatalogue.Temperature).Value;

        Assert.True(range.IsSingle);
        Assert.Equal(
            Range<Temperature>.Exactly(Temperature.FromCelsius(24)), range.As<Temperature>());
    }

    [Fact]
    public void A_range_of_one_kind_does_not_pass_for_another()
    {
        var range = QuantityText.Parse("24 °C", DimensionCatalogue.Temperature).Value;

        Assert.Throws<InvalidOperationException>(() => range.As<Length>());
    }

    [Fact]
    public void A_tidied_text_reads_back_as_itself() => Assert.All(
        DimensionCatalogue.All, dimension =>
        {
            foreach (var unit in dimension.Units)
            {
                foreach (var shape in new[] { "5", "0.25–7.50", "> 3", "≥ 3", "< 3", "≤ 3" })
                {
                    var first = QuantityText.Parse($"{shape} {unit.Symbol}", dimension).Value;
                    var again = QuantityText.Parse(first.Text, dimension).Value;
                    Assert.Equal(first with { Typed = again.Typed }, again);
                }
            }
        });

    private static void Reads(
        string typed, string tidy, Dimension dimension, bool basisRequired = false)
    {
        var result = QuantityText.Parse(typed, dimension, basisRequired);

        Assert.True(result.Ok, result.Ok ? "" : result.Problem.Kind.ToString());
        Assert.Equal(tidy, result.Value.Text);
        Assert.Equal(typed.Trim(), result.Value.Typed);
    }
}
