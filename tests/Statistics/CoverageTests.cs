using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

public class CoverageTests
{
    // Two-sided 95 % range of the binomial distribution, computed apart (scipy 1.10.1, R 4.2.2).
    [Theory]
    [InlineData(20, 0.9, 15, 20)]
    [InlineData(50, 0.9, 41, 49)]
    [InlineData(100, 0.9, 84, 95)]
    [InlineData(100, 0.95, 90, 99)]
    [InlineData(200, 0.8, 149, 171)]
    [InlineData(400, 0.9, 348, 371)]
    [InlineData(1000, 0.9, 881, 918)]
    public void Acceptance_bands_agree_with_the_table(int trials, double p, int low, int high) =>
        Assert.Equal((low, high), Coverage.AcceptanceBand(trials, p));

    // Sum of binomial terms by multiplication, no special function.
    [Theory]
    [InlineData(1, 0.5)]
    [InlineData(7, 0.8)]
    [InlineData(115, 0.95)]
    [InlineData(600, 0.5)]
    public void A_band_holds_at_least_its_confidence_and_not_without_its_ends(int n, double p)
    {
        var terms = new double[n + 1];
        terms[0] = Math.Pow(1 - p, n);
        for (var k = 1; k <= n; k++)
        {
            terms[k] = terms[k - 1] * (n - k + 1) / k * p / (1 - p);
        }

        var (low, high) = Coverage.AcceptanceBand(n, p);

        Assert.True(terms[low..(high + 1)].Sum() >= 0.95 - 1e-12);
        Assert.True(terms[..low].Sum() < 0.025);
        Assert.True(terms[..(low + 1)].Sum() >= 0.025 - 1e-12);
        Assert.True(terms[(high + 1)..].Sum() <= 0.025 + 1e-12);
        Assert.True(terms[high..].Sum() > 0.025);
    }

    // Formula of Kupiec 1995, J. Derivatives 3(2):73-84, computed apart (scipy 1.10.1, R 4.2.2).
    [Theory]
    [InlineData(84, 100, 0.90, 3.44931373, 0.06327804)]
    [InlineData(96, 100, 0.90, 5.06107020, 0.02446912)]
    [InlineData(245, 250, 0.95, 6.07148035, 0.01373818)]
    [InlineData(38, 50, 0.90, 8.16144861, 0.00427902)]
    [InlineData(90, 100, 0.90, 0, 1)]
    public void Likelihood_ratios_agree_with_the_table(
        int covered, int trials, double coverage, double ratio, double p)
    {
        var found = Coverage.Kupiec(covered, trials, coverage);

        Assert.Equal(ratio, found.LikelihoodRatio, 1e-8);
        Assert.Equal(p, found.P, 1e-7);
    }

    [Fact]
    public void A_ratio_exists_when_all_or_none_are_covered()
    {
        Assert.Equal(-20 * Math.Log(0.8), Coverage.Kupiec(10, 10, 0.8).LikelihoodRatio, 1e-12);
        Assert.Equal(-20 * Math.Log(0.2), Coverage.Kupiec(0, 10, 0.8).LikelihoodRatio, 1e-12);
    }

    // 90 of 100, computed apart (scipy 1.10.1, R 4.2.2).
    [Fact]
    public void Intervals_for_a_proportion_agree_with_the_table()
    {
        AssertInterval(0.8256343, 0.9447709, Proportion.Wilson(90, 100));
        AssertInterval(0.8237774, 0.9509953, Proportion.ClopperPearson(90, 100));
    }

    // Of no success among n the exact upper end is 1 - (α/2)^(1/n); of all, its mirror image.
    [Theory]
    [InlineData(1)]
    [InlineData(10)]
    [InlineData(300)]
    public void Exact_intervals_at_the_ends_have_a_closed_form(int n)
    {
        var end = 1 - Math.Pow(0.025, 1.0 / n);

        AssertInterval(0, end, Proportion.ClopperPearson(0, n), 1e-12);
        AssertInterval(1 - end, 1, Proportion.ClopperPearson(n, n), 1e-12);
        Assert.Equal(0, Proportion.Wilson(0, n).Low);
        Assert.Equal(1, Proportion.Wilson(n, n).High);
    }

    [Fact]
    public void Counts_that_cannot_be_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Proportion.Wilson(0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Proportion.ClopperPearson(3, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Coverage.Kupiec(-1, 2, 0.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => Coverage.AcceptanceBand(10, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Proportion.Wilson(1, 2, 0));
    }

    private static void AssertInterval(
        double low, double high, Interval actual, double tolerance = 1e-7)
    {
        Assert.Equal(low, actual.Low, tolerance);
        Assert.Equal(high, actual.High, tolerance);
    }
}
