using CareSheets.Statistics;
using MathNet.Numerics.Statistics;
using Xunit;
using Reference = MathNet.Numerics.Statistics.QuantileDefinition;
using QuantileDefinition = CareSheets.Statistics.QuantileDefinition;

namespace CareSheets.Tests.Statistics;

public class SortedSampleTests
{
    // MathNet.Numerics 5.0.0, which numbers the definitions as Hyndman and Fan 1996 do.
    [Fact]
    public void Quantiles_agree_with_a_general_library_by_every_definition()
    {
        (QuantileDefinition Ours, Reference Theirs)[] definitions =
        [
            (QuantileDefinition.Hazen, Reference.R5),
            (QuantileDefinition.Weibull, Reference.R6),
            (QuantileDefinition.Gumbel, Reference.R7),
            (QuantileDefinition.MedianUnbiased, Reference.R8),
            (QuantileDefinition.NormalUnbiased, Reference.R9),
        ];
        var random = new Random(8);
        for (var trial = 0; trial < 300; trial++)
        {
            var values = Enumerable.Range(0, 1 + random.Next(12))
                .Select(_ => Math.Round(20 + 10 * random.NextDouble(), 1)).ToArray();
            var p = trial < 20 ? trial % 2 : random.NextDouble();
            foreach (var (ours, theirs) in definitions)
            {
                var expected = values.QuantileCustom(p, theirs);
                Assert.Equal(expected, SortedSample.From(values).Quantile(p, ours)!.Value, 1e-9);
            }
        }
    }

    // By hand: (k - 1/3)/(n + 1/3) = p, so of five values p = 0.25 stands at 1/3 + 16/12 = 5/3.
    [Fact]
    public void The_default_is_median_unbiased()
    {
        var sample = SortedSample.From([5, 1, 4, 2, 3]);

        Assert.Equal(5.0 / 3, sample.Quantile(0.25)!.Value, 1e-14);
        Assert.Equal(1, sample.Quantile(0));
        Assert.Equal(5, sample.Quantile(1));
    }

    [Theory]
    [InlineData(new double[] { 3, 1, 2 }, 2)]
    [InlineData(new double[] { 4, 1, 2, 3 }, 2.5)]
    [InlineData(new double[] { 7 }, 7)]
    public void The_median_is_the_middle(double[] values, double median) =>
        Assert.Equal(median, SortedSample.From(values).Median!.Value, 1e-14);

    // R's manual page of function mad has this sample, unscaled 2 (from memory).
    [Fact]
    public void The_median_distance_is_scaled_for_normal_values()
    {
        var found = SortedSample.From([1, 2, 3, 4, 5, 6, 7, 8, 9]).MedianAbsoluteDeviation!.Value;

        Assert.Equal(2.9652, found, 1e-4);
        Assert.Equal(2 / Normal.From(0, 1).Quantile(0.75), found, 1e-13);
    }

    // Breakdown point 50 %: four wild values of nine leave both within the range of the others.
    [Theory]
    [InlineData(1e9)]
    [InlineData(-1e9)]
    public void Wild_values_short_of_half_do_not_carry_it_away(double wild)
    {
        var sample = SortedSample.From([22, 23, 24, 25, 26, wild, wild, wild, wild]);

        Assert.InRange(sample.Median!.Value, 22, 26);
        Assert.InRange(sample.MedianAbsoluteDeviation!.Value, 0, 1.4827 * 4);
    }

    [Fact]
    public void Shift_and_scale_carry_over()
    {
        var random = new Random(9);
        for (var trial = 0; trial < 100; trial++)
        {
            var values = Enumerable.Range(0, 1 + random.Next(20))
                .Select(_ => random.NextDouble()).ToArray();
            var before = SortedSample.From(values);
            var after = SortedSample.From([.. values.Select(x => 7 - 3 * x)]);

            Assert.Equal(7 - 3 * before.Median!.Value, after.Median!.Value, 1e-12);
            Assert.Equal(
                3 * before.MedianAbsoluteDeviation!.Value,
                after.MedianAbsoluteDeviation!.Value,
                1e-12);
            Assert.Equal(
                7 - 3 * before.Quantile(0.2)!.Value, after.Quantile(0.8)!.Value, 1e-12);
        }
    }

    [Fact]
    public void An_empty_sample_has_no_middle()
    {
        var empty = SortedSample.From([]);

        Assert.Null(empty.Median);
        Assert.Null(empty.MedianAbsoluteDeviation);
        Assert.Null(empty.Quantile(0.5));
    }

    [Fact]
    public void The_input_is_left_as_it_was()
    {
        double[] values = [3, 1, 2];

        var sample = SortedSample.From(values);

        Assert.Equal([3, 1, 2], values);
        Assert.Equal([1, 2, 3], Enumerable.Range(0, 3).Select(k => sample[k]));
    }

    [Fact]
    public void What_is_no_number_or_no_probability_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SortedSample.From([1, double.NaN]));
        Assert.Throws<ArgumentOutOfRangeException>(() => SortedSample.From([1]).Quantile(-0.1));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => SortedSample.From([1]).Quantile(double.NaN));
    }
}
