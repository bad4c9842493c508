using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

public class StudentTests
{
    private static readonly double[] Probabilities = [0.75, 0.90, 0.95, 0.975, 0.99, 0.995, 0.9995];

    [Fact]
    public void Quantiles_agree_with_the_table()
    {
        foreach (var row in ReferenceFile.Rows("student-quantiles.csv"))
        {
            var student = row[0] == "inf" ? null : Student.From(0, 1, ReferenceFile.Number(row[0]));
            foreach (var (cell, p) in row[1..].Zip(Probabilities))
            {
                var found = student?.Quantile(p) ?? Normal.From(0, 1).Quantile(p);
                Assert.Equal(ReferenceFile.Number(cell), found, 1e-8);
                Assert.Equal(-found, student?.Quantile(1 - p) ?? -found, 1e-8);
            }
        }
    }

    // R 4.2.2, function pt.
    [Theory]
    [InlineData(0.5, 1, 0.6475836176504)]
    [InlineData(1, 2, 0.7886751345948)]
    [InlineData(2, 5, 0.9490302605851)]
    [InlineData(2.5, 10, 0.9842765778817)]
    [InlineData(-3, 3, 0.0288344428112)]
    public void Probabilities_agree_with_the_table(double t, double freedom, double probability) =>
        Assert.Equal(probability, Student.From(0, 1, freedom).Cdf(t), 1e-13);

    // Closed forms for 1 and 2 degrees of freedom: tan(π(p - ½)), (2p - 1)/√(2p(1 - p)).
    [Theory]
    [InlineData(0.6)]
    [InlineData(0.999)]
    [InlineData(0.001)]
    public void Quantiles_of_one_and_two_degrees_have_closed_forms(double p)
    {
        var one = Math.Tan(Math.PI * (p - 0.5));
        var two = (2 * p - 1) / Math.Sqrt(2 * p * (1 - p));

        Assert.Equal(1, Student.From(0, 1, 1).Quantile(p) / one, 1e-11);
        Assert.Equal(1, Student.From(0, 1, 2).Quantile(p) / two, 1e-11);
    }

    // Closed form of Jordan, Krüger and Lerch 2019, J. Stat. Softw. 90(12), and integration.
    [Theory]
    [InlineData(0, 3, 0.2756644477)]
    [InlineData(1, 3, 0.6089977810)]
    [InlineData(2, 5, 1.3970360772)]
    [InlineData(0, 10, 0.2447397171)]
    [InlineData(-1, 30, 0.6022035901)]
    public void Ranked_probability_scores_agree_with_the_table(
        double value, double freedom, double score)
    {
        Assert.Equal(score, Student.From(0, 1, freedom).Crps(value)!.Value, 1e-9);
        Assert.Equal(
            2.5 * score, Student.From(24, 2.5, freedom).Crps(24 + 2.5 * value)!.Value, 1e-9);
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(0.5)]
    public void There_is_no_ranked_probability_score_without_a_mean(double freedom) =>
        Assert.Null(Student.From(0, 1, freedom).Crps(0));

    [Theory]
    [InlineData(1)]
    [InlineData(3.5)]
    [InlineData(40)]
    public void The_log_score_is_that_of_the_slope_of_the_probability(double freedom)
    {
        var student = Student.From(24, 2, freedom);
        var slope = (student.Cdf(26.5 + 1e-5) - student.Cdf(26.5 - 1e-5)) / 2e-5;

        Assert.Equal(-Math.Log(slope), student.LogScore(26.5), 1e-8);
    }

    // The normal distribution is the limit; Gosset's difference is of order 1/ν.
    [Fact]
    public void With_a_million_degrees_it_is_all_but_normal()
    {
        var student = Student.From(24, 2, 1e6);
        var normal = Normal.From(24, 2);

        Assert.Equal(normal.Cdf(27), student.Cdf(27), 1e-6);
        Assert.Equal(normal.Quantile(0.9), student.Quantile(0.9), 1e-5);
        Assert.Equal(normal.Crps(27), student.Crps(27)!.Value, 1e-5);
        Assert.Equal(normal.LogScore(27), student.LogScore(27), 1e-5);
    }

    [Fact]
    public void The_middle_is_the_location_and_intervals_are_even_about_it()
    {
        var student = Student.From(24, 2, 4);

        Assert.Equal(24, student.Quantile(0.5));
        Assert.Equal(0.5, student.Cdf(24));
        foreach (var coverage in new[] { 0.5, 0.8, 0.95 })
        {
            var interval = student.CentralInterval(coverage);
            Assert.Equal(48, interval.Low + interval.High, 1e-12);
            Assert.Equal(coverage, student.Cdf(interval.High) - student.Cdf(interval.Low), 1e-13);
        }
    }

    [Fact]
    public void What_is_not_a_distribution_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Student.From(double.NaN, 1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Student.From(0, 0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Student.From(0, 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Student.From(0, 1, 1).Quantile(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Student.From(0, 1, 1).Cdf(double.NaN));
    }
}
