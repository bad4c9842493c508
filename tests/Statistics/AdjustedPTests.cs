using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

/// <summary>Values: Benjamini and Hochberg 1995, and R 4.2.2, function p.adjust.</summary>
public class AdjustedPTests
{
    private static readonly double[] Published =
        [.. ReferenceFile.Rows("adjusted-p.csv").Select(row => ReferenceFile.Number(row[1]))];

    [Fact]
    public void The_published_p_values_are_adjusted_as_in_the_table()
    {
        AssertColumn(3, AdjustedP.BenjaminiHochberg(Published));
        AssertColumn(4, AdjustedP.Holm(Published));
        AssertColumn(5, AdjustedP.Hochberg(Published));
        AssertColumn(6, AdjustedP.BenjaminiYekutieli(Published), 1e-11);
    }

    // 4 rejected at 0.05, where methods that guard against any false alarm reject 3: the paper.
    [Theory]
    [InlineData(0.05, 4)]
    [InlineData(0.10, 9)]
    [InlineData(0.01, 3)]
    public void As_many_are_rejected_as_in_the_paper(double limit, int rejected) => Assert.Equal(
        rejected, AdjustedP.BenjaminiHochberg(Published).Count(p => p <= limit));

    [Fact]
    public void Methods_against_any_false_alarm_reject_three()
    {
        Assert.Equal(3, AdjustedP.Holm(Published).Count(p => p <= 0.05));
        Assert.Equal(3, AdjustedP.Hochberg(Published).Count(p => p <= 0.05));
    }

    [Theory]
    [InlineData(new[] { 0.01, 0.02, 0.03, 0.04, 0.05 }, new[] { 0.05, 0.05, 0.05, 0.05, 0.05 })]
    [InlineData(new[] { 0.04, 0.049 }, new[] { 0.049, 0.049 })]
    [InlineData(
        new[] { 0.5719, 0.0001, 0.3240, 0.0095, 0.0201 },
        new[] { 0.5719, 0.0005, 0.405, 0.02375, 0.0335 })]
    [InlineData(new[] { 0.2, 0.2, 0.2 }, new[] { 0.2, 0.2, 0.2 })]
    [InlineData(new[] { 0.03 }, new[] { 0.03 })]
    [InlineData(new[] { 0.9, 0.95, 1 }, new[] { 1.0, 1.0, 1.0 })]
    [InlineData(new double[0], new double[0])]
    public void Small_cases_agree(double[] p, double[] expected) => Assert.Equal(
        expected, AdjustedP.BenjaminiHochberg(p), (a, b) => Math.Abs(a - b) < 1e-12);

    [Fact]
    public void A_test_without_a_p_does_not_count()
    {
        double?[] p = [0.01, 0.01, null, 0.2, 1];

        var found = AdjustedP.BenjaminiHochberg(p);

        Assert.Null(found[2]);
        Assert.Equal(0.02, found[0]!.Value, 1e-12);
        Assert.Equal(0.8 / 3, found[3]!.Value, 1e-12);
        Assert.Equal(1.0, found[4]);
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void What_is_no_probability_is_refused(double p)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => AdjustedP.BenjaminiHochberg([0.5, p]));
        Assert.Throws<ArgumentOutOfRangeException>(() => AdjustedP.Holm([0.5, p]));
    }

    // The definition taken literally: min over j >= i of min(1, m p(j) / j).
    [Fact]
    public void It_is_its_definition_on_values_of_chance()
    {
        var random = new Random(20261125);
        for (var trial = 0; trial < 200; trial++)
        {
            var p = Enumerable.Range(0, 1 + random.Next(30))
                .Select(_ => Math.Round(random.NextDouble(), 2)).ToArray();
            var sorted = p.Order().ToArray();
            double Literal(double one) => Enumerable.Range(0, p.Length)
                .Where(j => sorted[j] >= one)
                .Min(j => Math.Min(1, p.Length * sorted[j] / (j + 1)));

            Assert.Equal(
                p.Select(Literal),
                AdjustedP.BenjaminiHochberg(p),
                (a, b) => Math.Abs(a - b) < 1e-12);
        }
    }

    private static void AssertColumn(int column, double[] actual, double tolerance = 1e-12) =>
        Assert.Equal(
            ReferenceFile.Rows("adjusted-p.csv").Select(row => ReferenceFile.Number(row[column])),
            actual,
            (a, b) => Math.Abs(a - b) < tolerance);
}
