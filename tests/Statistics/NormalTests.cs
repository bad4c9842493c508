using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

public class NormalTests
{
    private static readonly Normal Standard = Normal.From(0, 1);

    [Fact]
    public void Scores_agree_with_the_table()
    {
        foreach (var row in ReferenceFile.Rows("normal-scores.csv"))
        {
            var (value, mean, deviation) = (
                ReferenceFile.Number(row[0]), ReferenceFile.Number(row[1]),
                ReferenceFile.Number(row[2]));
            var forecast = Normal.From(mean, deviation);

            Assert.Equal(ReferenceFile.Number(row[3]), forecast.Crps(value), 1e-10);
            AssertIfKnown(row[4], forecast.LogScore(value));
            AssertIfKnown(row[5], forecast.Cdf(value));
        }
    }

    // Abramowitz and Stegun 1964, Table 26.1, probabilities to 15 decimals (from memory).
    [Theory]
    [InlineData(0.0, 0.500000000000000)]
    [InlineData(0.5, 0.691462461274013)]
    [InlineData(1.0, 0.841344746068543)]
    [InlineData(1.5, 0.933192798731142)]
    [InlineData(2.0, 0.977249868051821)]
    [InlineData(3.0, 0.998650101968370)]
    public void Probabilities_agree_with_the_published_table(double z, double probability)
    {
        Assert.Equal(probability, Standard.Cdf(z), 1e-14);
        Assert.Equal(1 - probability, Standard.Cdf(-z), 1e-14);
    }

    // R 4.2.2 qnorm; the last line of Reference/student-quantiles.csv.
    [Theory]
    [InlineData(0.50, 0.6744897502)]
    [InlineData(0.80, 1.2815515655)]
    [InlineData(0.95, 1.9599639845)]
    public void Central_intervals_reach_the_tabulated_distance(double coverage, double z)
    {
        var interval = Normal.From(24, 2).CentralInterval(coverage);

        Assert.Equal(24 - 2 * z, interval.Low, 1e-9);
        Assert.Equal(24 + 2 * z, interval.High, 1e-9);
    }

    [Theory]
    [InlineData(1e-300)]
    [InlineData(1e-12)]
    [InlineData(0.025)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(0.9999999)]
    public void The_quantile_undoes_the_probability(double probability) => Assert.Equal(
        1, Standard.Cdf(Standard.Quantile(probability)) / probability, 1e-11);

    // Integral of (F(x) - 1{x >= y})² dx, the definition, by Simpson's rule on either side.
    [Theory]
    [InlineData(24, 1.5, 26.2)]
    [InlineData(7, 0.3, 6.1)]
    public void The_ranked_probability_score_is_its_integral(double mean, double sd, double value)
    {
        var forecast = Normal.From(mean, sd);
        var below = Simpson.Integrate(
            x => Math.Pow(forecast.Cdf(x), 2), mean - 12 * sd, value, 4000);
        var above = Simpson.Integrate(
            x => Math.Pow(1 - forecast.Cdf(x), 2), value, mean + 12 * sd, 4000);

        Assert.Equal(below + above, forecast.Crps(value), 1e-9);
    }

    // Two-sided p: 2 (1 - Φ(z)) from the same table; far out from the asymptotic series of
    // Mills' ratio (Abramowitz and Stegun 1964, 26.2.12) with five terms.
    [Fact]
    public void Two_sided_p_is_right_near_and_far()
    {
        Assert.Equal(1, TailProbability.TwoSidedNormal(0));
        Assert.Equal(0.05, TailProbability.TwoSidedNormal(-1.9599639845400545), 1e-15);
        Assert.Equal(2 * (1 - 0.998650101968370), TailProbability.TwoSidedNormal(3), 1e-14);
        const double z = 20.0;
        var mills = 1 - 1 / (z * z) + 3 / Math.Pow(z, 4) - 15 / Math.Pow(z, 6)
            + 105 / Math.Pow(z, 8);
        var tail = 2 * Math.Exp(-z * z / 2) / (z * Math.Sqrt(2 * Math.PI)) * mills;
        Assert.Equal(1, TailProbability.TwoSidedNormal(z) / tail, 1e-9);
        Assert.Equal(0, TailProbability.TwoSidedNormal(1e6));
    }

    [Fact]
    public void What_is_not_a_distribution_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Normal.From(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Normal.From(0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Normal.FromVariance(0, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Normal.From(0, double.PositiveInfinity));
        Assert.Throws<ArgumentOutOfRangeException>(() => Standard.Crps(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Standard.Quantile(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Standard.CentralInterval(1));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => TailProbability.TwoSidedNormal(double.NegativeInfinity));
    }

    private static void AssertIfKnown(string cell, double actual)
    {
        if (cell.Length > 0)
        {
            Assert.Equal(ReferenceFile.Number(cell), actual, 1e-10);
        }
    }
}
