using System.Globalization;
using CareSheets.Pages;
using CareSheets.Quantities;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages;

/// <summary>
/// Places of ranges on their scales, computed here from the schema's windows: temperature
/// 12–34 °C, pH 4.0–9.5, hardness 0–30 °dH on the scale log(1 + value).
/// </summary>
public sealed class RangeBarTests
{
    private static readonly ToySite Toy = ToySite.Read();

    [Theory]
    [InlineData("danio-rerio", "Temperature", 18, 27, 12, 34)]
    [InlineData("danio-margaritatus", "Temperature", 20, 25, 12, 34)] // 68–77 °F, exactly
    [InlineData("danio-rerio", "pH", 6.5, 8.0, 4.0, 9.5)]
    public void On_an_even_scale_a_band_stands_where_its_share_of_the_scale_puts_it(
        string species, string label, double low, double high, double from, double to)
    {
        var bar = Bar(species, label);
        Assert.Equal(Percent((low - from) / (to - from)), bar.Start);
        Assert.Equal(Percent((high - low) / (to - from)), bar.Width);
        Assert.False(bar.IsOpenLow || bar.IsOpenHigh || bar.HasInner);
    }

    /// <summary>The scale is labelled in °dH, so 1 + value means 1 °dH more, whatever the program counts in.</summary>
    [Theory]
    [InlineData("danio-rerio", 3, 20)]
    [InlineData("danio-margaritatus", 4, 18)]
    public void On_a_logarithmic_scale_a_band_stands_at_the_logarithm_of_one_more_than_its_ends(
        string species, double low, double high)
    {
        var bar = Bar(species, "General hardness");
        double At(double value) => Math.Log(1 + value) / Math.Log(1 + 30);
        Assert.Equal(Percent(At(low)), bar.Start);
        Assert.Equal(Percent(At(high) - At(low)), bar.Width);
    }

    [Fact]
    public void An_open_end_runs_to_the_end_of_the_scale_and_is_marked_open()
    {
        var bar = Bar("betta-splendens", "General hardness"); // > 2 °dH
        Assert.True(bar.IsOpenHigh && !bar.IsOpenLow);
        Assert.Equal(100, Number(bar.Start) + Number(bar.Width), 1);

        var other = Changed("hardness: > 2 °dH", "hardness: < 12 °dH").Row("betta-splendens", "General hardness").Bar!;
        Assert.True(other.IsOpenLow && !other.IsOpenHigh);
        Assert.Equal("0", other.Start);
    }

    [Fact]
    public void What_it_prefers_is_a_band_within_the_band()
    {
        var bar = Bar("betta-splendens", "Temperature"); // keep 24–30, prefers 26–28
        Assert.True(bar.HasInner);
        Assert.Equal(Percent(14 / 22.0), bar.InnerStart);
        Assert.Equal(Percent(2 / 22.0), bar.InnerWidth);
        Assert.True(Number(bar.Start) < Number(bar.InnerStart));
        Assert.True(Number(bar.InnerStart) + Number(bar.InnerWidth) < Number(bar.Start) + Number(bar.Width));
    }

    [Theory]
    [InlineData("24–30 °C, prefers: 26–28 °C", "25 °C")]
    [InlineData("24–30 °C, prefers: 26–28 °C", "34 °C")]
    [InlineData("24–30 °C, prefers: 26–28 °C", "12 °C")]
    [InlineData("24–30 °C, prefers: 26–28 °C", "5–40 °C")]
    public void Whatever_is_stated_the_band_is_visible_and_stays_on_the_scale(string from, string to)
    {
        var bar = Changed(from, to).Row("betta-splendens", "Temperature").Bar!;
        Assert.True(Number(bar.Width) >= 1);
        Assert.True(Number(bar.Start) >= 0);
        Assert.True(Number(bar.Start) + Number(bar.Width) <= 100);
    }

    [Theory]
    [InlineData(UnitSystem.Both, "12", "34 °C")]
    [InlineData(UnitSystem.Metric, "12", "34 °C")]
    [InlineData(UnitSystem.US, "54", "93 °F")] // 53.6 and 93.2
    public void The_ends_of_the_scale_are_figures_and_the_unit_stands_once(UnitSystem units, string low, string high)
    {
        var bar = ToySite.Read(units).Row("danio-rerio", "Temperature").Bar!;
        Assert.Equal((low, high), (bar.ScaleLow, bar.ScaleHigh));
    }

    [Fact]
    public void The_picture_says_in_words_what_it_shows() =>
        Assert.Equal("Temperature: 18–27 °C (65–80 °F)", Bar("danio-rerio", "Temperature").Description);

    private static RangeBar Bar(string species, string label) =>
        Toy.Row(species, label).Bar ?? throw new InvalidOperationException($"No bar: {species} {label}");

    private static ToySite Changed(string from, string to) =>
        ToySite.Read(change: w => w.Replace("content/species/betta-splendens.md", from, to));

    private static string Percent(double share) =>
        Math.Round(100 * share, 1, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);

    private static double Number(string percent) => double.Parse(percent, CultureInfo.InvariantCulture);
}
