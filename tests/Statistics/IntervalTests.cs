using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

public class IntervalTests
{
    // Worked by hand from Gneiting and Raftery 2007: width + 2/α times the miss.
    [Theory]
    [InlineData(22, 28, 25, 0.10, 6)]
    [InlineData(22, 28, 29, 0.10, 26)]
    [InlineData(22, 28, 21.5, 0.10, 16)]
    [InlineData(6.5, 7.5, 7.9, 0.05, 17)]
    [InlineData(0, 10, 10, 0.20, 10)]
    public void Scores_agree_with_the_table(
        double low, double high, double value, double alpha, double score) =>
        Assert.Equal(score, Interval.Between(low, high).Score(value, 1 - alpha), 1e-9);

    [Fact]
    public void Both_ends_belong_to_it()
    {
        var interval = Interval.Between(22, 28);

        Assert.True(interval.Contains(22));
        Assert.True(interval.Contains(28));
        Assert.False(interval.Contains(28.0000001));
        Assert.Equal(6, interval.Width);
    }

    [Fact]
    public void What_is_no_interval_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Interval.Between(2, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Interval.Between(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Interval.Between(0, double.PositiveInfinity));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Interval.Between(0, 1).Score(double.NaN, 0.9));
    }
}
