using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

public class EnsembleScoreTests
{
    // Worked by hand from mean |x - y| - ½ mean |x - x'|.
    [Theory]
    [InlineData(new double[] { 1, 2, 3, 4, 5 }, 3, 0.4)]
    [InlineData(new double[] { 1, 2, 3, 4, 5 }, 6, 2.2)]
    [InlineData(new double[] { 24, 25, 27 }, 26, 2.0 / 3)]
    [InlineData(new double[] { 24 }, 26, 2)]
    public void Scores_agree_with_the_table(double[] members, double value, double score) =>
        Assert.Equal(score, EnsembleScore.Crps(SortedSample.From(members), value)!.Value, 1e-12);

    [Fact]
    public void The_sum_by_rank_is_the_sum_over_pairs()
    {
        var random = new Random(12);
        for (var trial = 0; trial < 100; trial++)
        {
            var members = Enumerable.Range(0, 1 + random.Next(40))
                .Select(_ => Math.Round(10 * random.NextDouble(), 1)).ToArray();
            var value = 10 * random.NextDouble();
            var pairs = members.SelectMany(_ => members, (a, b) => Math.Abs(a - b)).Average();
            var literal = members.Average(x => Math.Abs(x - value)) - pairs / 2;

            var found = EnsembleScore.Crps(SortedSample.From(members), value)!.Value;

            Assert.Equal(literal, found, 1e-12);
        }
    }

    // As the members multiply along the quantiles, the score tends to the normal closed form.
    [Fact]
    public void Many_members_score_like_the_distribution_they_stand_for()
    {
        var normal = Normal.From(24, 2);
        var members = Enumerable.Range(0, 20_000)
            .Select(k => normal.Quantile((k + 0.5) / 20_000)).ToArray();

        var found = EnsembleScore.Crps(SortedSample.From(members), 27)!.Value;

        Assert.Equal(normal.Crps(27), found, 1e-4);
    }

    [Fact]
    public void No_member_no_score() =>
        Assert.Null(EnsembleScore.Crps(SortedSample.From([]), 26));
}
