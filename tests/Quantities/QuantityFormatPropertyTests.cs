using CareSheets.Quantities;
using CsCheck;

namespace CareSheets.Tests.Quantities;

/// <summary>What a translated range promises, on ranges nobody thought of.</summary>
public class QuantityFormatPropertyTests
{
    /// <summary>Relative to the larger of the figure and one; conversion noise, no more.</summary>
    private const double Noise = 1e-8;

    private static readonly Gen<UnitSystem> Systems =
        Gen.Bool.Select(us => us ? UnitSystem.US : UnitSystem.Metric);

    [Fact]
    public void A_temperature_range_rounded_inward_stays_inside() =>
        StaysInside<Temperature>(-20, 60);

    [Fact]
    public void A_hardness_range_rounded_inward_stays_inside() =>
        StaysInside<GeneralHardness>(0, 900);

    [Fact]
    public void A_length_range_rounded_inward_stays_inside() => StaysInside<Length>(0, 300);

    [Fact]
    public void A_volume_range_rounded_inward_stays_inside() => StaysInside<Volume>(0, 3000);

    [Fact]
    public void A_length_rounded_upward_is_never_below() => IsNeverBelow<Length>(0, 300);

    [Fact]
    public void A_volume_rounded_upward_is_never_below() => IsNeverBelow<Volume>(0, 3000);

    [Fact]
    public void A_difference_rounded_downward_is_never_above() =>
        Gen.Select(Ranges<TemperatureDifference>(0, 40), Systems).Sample((range, system) =>
        {
            var shown = ReadBack(range, system, Rounding.Downward);
            Assert.True(shown.Low <= Above(range.Min) && shown.High <= Above(range.Max));
        });

    [Fact]
    public void The_nearest_figure_is_at_most_half_a_step_away() =>
        Gen.Select(Ranges<Temperature>(-20, 60), Systems).Sample((range, system) =>
        {
            var unit = Temperature.Dimension.For(system);
            var half = unit.Step / 2 * (unit.ToCanonical(1) - unit.ToCanonical(0));
            var shown = ReadBack(range, system, Rounding.Nearest);
            Assert.Equal(range.Min!.Value.Canonical, shown.Low!.Value, half + Noise);
            Assert.Equal(range.Max!.Value.Canonical, shown.High!.Value, half + Noise);
        });

    [Fact]
    public void A_figure_written_to_a_tenth_reads_back_as_the_same_tenth() =>
        Gen.Select(Gen.Int[-2731, 9999], Gen.Int[0, 9999]).Sample((tenths, more) =>
        {
            var (low, high) = (tenths / 10m, (tenths + more) / 10m);
            var typed = FormattableString.Invariant($"{low}–{high} °C");
            var first = QuantityText.Parse(typed, DimensionCatalogue.Temperature).Value;
            Assert.Equal(((double)low, (double)high), (first.Low, first.High));
            var again = QuantityText.Parse(first.Text, DimensionCatalogue.Temperature).Value;
            Assert.Equal((first.Low, first.High, first.Text), (again.Low, again.High, again.Text));
        });

    private static void StaysInside<T>(double low, double high)
        where T : struct, IQuantity<T> =>
        Gen.Select(Ranges<T>(low, high), Systems).Sample(
            (range, system) =>
            {
                var shown = ReadBack(range, system, Rounding.Inward);
                Assert.True(shown.Low >= Below(range.Min), $"{range} {shown.Text}");
                Assert.True(shown.High <= Above(range.Max), $"{range} {shown.Text}");
            },
            iter: 5000);

    private static void IsNeverBelow<T>(double low, double high)
        where T : struct, IQuantity<T> =>
        Gen.Select(Ranges<T>(low, high), Systems).Sample(
            (range, system) =>
            {
                var shown = ReadBack(range, system, Rounding.Upward);
                Assert.True(shown.Low >= Below(range.Min), $"{range} {shown.Text}");
                Assert.True(shown.High >= Below(range.Max), $"{range} {shown.Text}");
            },
            iter: 5000);

    /// <summary>Wide ones and narrow ones, which no whole step fits into.</summary>
    private static Gen<Range<T>> Ranges<T>(double low, double high)
        where T : struct, IQuantity<T> =>
        from min in Gen.Double[low, high]
        from width in Gen.OneOf(Gen.Double[0.001, high - low], Gen.Double[0.001, 0.5])
        select Range<T>.Between(T.FromCanonical(min), T.FromCanonical(min + width));

    /// <summary>What a reader sees, read as a writer's text would be: format, then parse.</summary>
    private static StatedRange ReadBack<T>(Range<T> range, UnitSystem system, Rounding rounding)
        where T : struct, IQuantity<T>
    {
        var shown = QuantityFormat.Computed(range, system, rounding);
        return QuantityText.Parse(shown.Text, T.Dimension).Value;
    }

    private static double Below<T>(T? end)
        where T : struct, IQuantity<T> => end!.Value.Canonical - Slack(end.Value.Canonical);

    private static double Above<T>(T? end)
        where T : struct, IQuantity<T> => end!.Value.Canonical + Slack(end.Value.Canonical);

    /// <summary>Noise is forgiven in the unit shown: 32 °F stand at 0 °C.</summary>
    private static double Slack(double value) => Noise * (20 + Math.Abs(value));
}
