using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

public class UniformityTests
{
    // Exact 95 % points, computed apart (scipy 1.10.1, R 4.2.2).
    [Theory]
    [InlineData(20, 0.29408)]
    [InlineData(50, 0.18841)]
    [InlineData(100, 0.13403)]
    public void Critical_distances_agree_with_the_table(int count, double distance) =>
        Assert.Equal(distance, Uniformity.CriticalDistance(count), 5e-6);

    // Marsaglia, Tsang and Wang 2003, J. Stat. Softw. 8(18): P(D of 10 < 0.274) = 0.628479...
    // (from memory).
    [Fact]
    public void The_worked_example_of_the_paper_is_met() =>
        Assert.Equal(0.628479, Uniformity.ProbabilityBelow(0.274, 10), 1e-6);

    // One value: D < d when it lies between 1 - d and d, so 2d - 1. Two values: 2 (2d - 1/2)² up
    // to d = 1/2, and 1 - 2 (1 - d)² beyond, when not both are above d or both below 1 - d.
    [Theory]
    [InlineData(0.5, 1, 0)]
    [InlineData(0.7, 1, 0.4)]
    [InlineData(1, 1, 1)]
    [InlineData(0.2, 2, 0)]
    [InlineData(0.4, 2, 2 * 0.3 * 0.3)]
    [InlineData(0.55, 2, 1 - 2 * 0.45 * 0.45)]
    [InlineData(0.9, 2, 1 - 2 * 0.1 * 0.1)]
    [InlineData(0.0, 5, 0)]
    public void Small_counts_have_closed_forms(double distance, int count, double probability) =>
        Assert.Equal(probability, Uniformity.ProbabilityBelow(distance, count), 1e-12);

    // Kolmogorov 1933: P(√n D < x) tends to 1 - 2 Σ (-1)^(k-1) exp(-2k²x²), here near 1e-2/√n.
    [Fact]
    public void Many_values_approach_the_limit_law()
    {
        const double x = 1.2;
        var limit = 1 - 2 * Enumerable.Range(1, 10).Sum(
            k => (k % 2 == 1 ? 1 : -1) * Math.Exp(-2.0 * k * k * x * x));

        var found = Uniformity.ProbabilityBelow(x / Math.Sqrt(2000), 2000);

        Assert.Equal(limit, found, 0.01);
    }

    [Fact]
    public void The_distance_is_the_largest_gap_on_either_side()
    {
        Assert.Equal(0.5, Uniformity.Distance(SortedSample.From([0.5])));
        Assert.Equal(0.9, Uniformity.Distance(SortedSample.From([0.9])));
        Assert.Equal(
            0.6, Uniformity.Distance(SortedSample.From([0.1, 0.3, 0.4]))!.Value, 1e-15);
        Assert.Null(Uniformity.Distance(SortedSample.From([])));
    }

    // Simulation: the share of samples beyond the exact point must lie in its binomial band.
    [Fact]
    public void About_one_uniform_sample_in_twenty_lies_beyond_the_point()
    {
        var random = new Random(33);
        var critical = Uniformity.CriticalDistance(12);

        var below = Enumerable.Range(0, 4000).Count(_ => Uniformity.Distance(
            SortedSample.From([.. Enumerable.Range(0, 12).Select(_ => random.NextDouble())]))
            < critical);

        var (low, high) = Coverage.AcceptanceBand(4000, 0.95, 0.999);
        Assert.InRange(below, low, high);
    }

    [Fact]
    public void What_is_no_probability_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Uniformity.Distance(SortedSample.From([1.5])));
        Assert.Throws<ArgumentOutOfRangeException>(() => Uniformity.ProbabilityBelow(0.1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Uniformity.ProbabilityBelow(double.NaN, 3));
    }
}
