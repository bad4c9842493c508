using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

/// <summary>Values: R 4.2.2, function rstudent, on intercept-only models; brute force.</summary>
public class SingleGroupTests
{
    [Theory]
    [InlineData(0, 14.00, 4.082482905, -0.876356092, 0.4453477765)]
    [InlineData(1, 13.50, 4.509249753, -0.2975308222, 0.7854750214)]
    [InlineData(2, 13.75, 4.349329450, -0.5655296531, 0.6112484553)]
    [InlineData(3, 13.25, 4.573474245, -0.0488921082, 0.9640782357)]
    [InlineData(4, 11.50, 1.290994449, 5.8889727457, 0.0097726258)]
    public void Each_value_is_judged_by_the_others(
        int index, double mean, double deviation, double z, double p)
    {
        double[] values = [10, 12, 11, 13, 20];

        var found = SingleGroup.WithoutOwnValue(values)[index]!;

        Assert.Equal(mean, found.Location, 1e-12);
        Assert.Equal(deviation, found.Scale / Math.Sqrt(1 + 1 / 4.0), 1e-8);
        Assert.Equal(3, found.DegreesOfFreedom);
        Assert.Equal(z, found.T(values[index]), 1e-9);
        Assert.Equal(p, TailProbability.TwoSidedStudent(found.T(values[index]), 3), 1e-9);
    }

    [Fact]
    public void The_next_value_lies_in_the_tabulated_interval()
    {
        var found = SingleGroup.NextValue([10, 12, 11, 13])!;

        Assert.Equal(6.906534422, found.CentralInterval(0.95).Low, 1e-8);
        Assert.Equal(16.093465578, found.CentralInterval(0.95).High, 1e-8);
        Assert.Equal(11.5 + 2.363880364, found.CentralInterval(0.80).High, 1e-8);
    }

    // Student 1908, Biometrika 6:1-25: extra hours of sleep (data set sleep of R, from memory).
    [Fact]
    public void Sleep_agrees_with_the_table() => AssertAll(
        [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0],
        [-0.02777670617, -1.47155495077, -0.53716485314, -1.17264730789, -0.47890174069,
            1.72399891441, 2.01059786488, 0.02777670617, -0.42122535772, 0.71630591443]);

    // Michelson 1879, speed of light less 299 000 km/s, run 1 (data set morley of R, from memory).
    [Theory]
    [InlineData(14, -3.0286011284)]
    [InlineData(2, -1.7381778797)]
    [InlineData(4, 1.6431993691)]
    public void The_speed_of_light_agrees_with_the_table(int row, double t)
    {
        double[] speeds = [850, 740, 900, 1070, 930, 850, 950, 980, 980, 880,
            1000, 980, 930, 650, 760, 810, 1000, 1000, 960, 960];

        Assert.Equal(t, SingleGroup.WithoutOwnValue(speeds)[row - 1]!.T(speeds[row - 1]), 1e-9);
    }

    [Fact]
    public void One_wild_value_does_not_blur_the_judgement_of_itself()
    {
        double[] values = [1, 1.5, 2, 1e12];

        var found = SingleGroup.WithoutOwnValue(values)[3]!;

        Assert.Equal(1.5, found.Location, 1e-15);
        Assert.Equal(0.5 * Math.Sqrt(4 / 3.0), found.Scale, 1e-15);
    }

    [Fact]
    public void Too_few_or_equal_values_foretell_nothing()
    {
        Assert.Null(SingleGroup.NextValue([]));
        Assert.Null(SingleGroup.NextValue([24]));
        Assert.Null(SingleGroup.NextValue([24, 24]));
        Assert.Empty(SingleGroup.WithoutOwnValue([]));
        Assert.All(SingleGroup.WithoutOwnValue([24, 25]), Assert.Null);
        Assert.Null(SingleGroup.WithoutOwnValue([24, 24, 25])[2]);
        Assert.NotNull(SingleGroup.WithoutOwnValue([24, 24, 25])[0]);
    }

    [Fact]
    public void A_value_that_is_no_number_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SingleGroup.NextValue([1, double.NaN]));

    private static void AssertAll(double[] values, double[] expected)
    {
        var found = SingleGroup.WithoutOwnValue(values);
        foreach (var (index, t) in expected.Index())
        {
            Assert.Equal(t, found[index]!.T(values[index]), 1e-9);
        }
    }
}
