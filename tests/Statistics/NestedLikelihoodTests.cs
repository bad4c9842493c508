using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

/// <summary>Values: Reference/nested-effects.json (lme4 1.1-31 and dense algebra).</summary>
public class NestedLikelihoodTests
{
    public static TheoryData<string, string> Points { get; } = Pairs();

    [Theory]
    [MemberData(nameof(Points))]
    public void Likelihoods_and_mean_at_fixed_variances_agree_with_the_table(
        string name, string pointName)
    {
        var (known, point) = Find(name, pointName);

        var found = NestedLikelihood.Compute(known.Sample(), RankVariances.From(point.Variances));

        Assert.Equal(point.Restricted, found.Restricted, 1e-7);
        Assert.Equal(point.Full, found.Full, 1e-7);
        Assert.Equal(point.Mean, found.Mean.Value, 1e-6);
        Assert.Equal(point.StandardError, found.Mean.StandardError, 1e-8);
        if (point.FullAt60 is { } at60)
        {
            Assert.Equal(at60, found.FullAt(60), 1e-7);
        }
    }

    [Theory]
    [MemberData(nameof(Points))]
    public void Effects_and_both_kinds_of_standard_error_agree_with_the_table(
        string name, string pointName)
    {
        var (known, point) = Find(name, pointName);
        var sample = known.Sample();
        var variances = RankVariances.From(point.Variances);
        var found = NestedPredictions.Compute(sample, variances);
        var given = NestedPredictions.ComputeGivenMean(sample, variances, found.Mean!.Value);

        foreach (var effects in point.Effects)
        {
            foreach (var (offset, value) in effects.Values.Index())
            {
                var node = effects.First + offset;
                Assert.Equal(value, found.Effect(effects.Rank, node).Value, 1e-6);
                Assert.Equal(
                    effects.Full!.Value, found.Effect(effects.Rank, node).StandardError, 1e-6);
                Assert.Equal(
                    effects.Conditional!.Value,
                    given.Effect(effects.Rank, node).StandardError,
                    1e-6);
            }
        }
    }

    [Fact]
    public void One_value_has_a_restricted_likelihood_of_one()
    {
        var sample = NestedSample.From(NestedTree.FromParents([[0], [0]]), [24.0]);

        var found = NestedLikelihood.Compute(sample, RankVariances.From(4, 1));

        Assert.Equal(0, found.Restricted);
        Assert.Equal(24, found.Mean.Value);
        Assert.Equal(Math.Sqrt(5), found.Mean.StandardError, 1e-14);
    }

    [Fact]
    public void A_sample_without_values_has_no_likelihood()
    {
        var sample = NestedSample.From(NestedTree.FromParents([[0, 0]]), [null, null]);

        Assert.Throws<ArgumentException>(
            () => NestedLikelihood.Compute(sample, RankVariances.From(1)));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void The_likelihood_at_a_mean_that_is_no_number_is_refused(double mean)
    {
        var found = NestedLikelihood.Compute(
            NestedCase.Named("Rail").Sample(), RankVariances.From(400, 25));

        Assert.Throws<ArgumentOutOfRangeException>(() => found.FullAt(mean));
    }

    private static (NestedCase Case, NestedCase.Point Point) Find(string name, string point)
    {
        var known = NestedCase.Named(name);
        return (known, known.Points.Single(one => one.Name == point));
    }

    private static TheoryData<string, string> Pairs()
    {
        var pairs = new TheoryData<string, string>();
        foreach (var known in NestedCase.All)
        {
            foreach (var point in known.Points)
            {
                pairs.Add(known.Name, point.Name);
            }
        }

        return pairs;
    }
}
