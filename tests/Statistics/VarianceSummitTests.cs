using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

/// <summary>That a fit is the highest point there is, against points of chance.</summary>
public class VarianceSummitTests
{
    public static TheoryData<int> Samples { get; } = [.. Enumerable.Range(0, 100)];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Without_a_prior_no_other_variances_explain_the_values_better(int number)
    {
        var (sample, _) = RandomNesting.Number(number);
        var best = Best(sample, VariancePrior.None);

        foreach (var other in Others(number, best))
        {
            Assert.True(Height(sample, other) <= Height(sample, best) + 1e-9, Print(best, other));
        }
    }

    // The log density of the prior over the log variances is written out here once more, from
    // its definition: -ν/2 (ln s + c/s) with ν = 1 and c an equal share of the sample variance.
    [Theory]
    [MemberData(nameof(Samples))]
    public void With_the_weak_prior_no_other_variances_are_more_probable(int number)
    {
        var (sample, _) = RandomNesting.Number(number);
        var best = Best(sample, VariancePrior.Weak);
        var values = Enumerable.Range(0, sample.Tree.LeafCount)
            .Select(leaf => sample[leaf]).OfType<double>().ToArray();
        var share = values.Sum(y => Math.Pow(y - values.Average(), 2))
            / (values.Length - 1) / best.Count;
        double Posterior(RankVariances at) => Height(sample, at)
            - at.Values.Sum(s => 0.5 * (Math.Log(s) + share / s));

        Assert.All(best.Values, variance => Assert.True(variance > share / 1000));
        foreach (var other in Others(number, best).Where(at => at.Values.All(s => s > 0)))
        {
            Assert.True(Posterior(other) <= Posterior(best) + 1e-9, Print(best, other));
        }
    }

    // Nestings on which the likelihood has two summits, or one so near 0 that a search which has
    // set the rank to 0 must take it back; the higher summit as found by climbs from a dozen
    // starting points of chance.
    [Theory]
    [InlineData(47, new[] { 0, 0, 0.00117045, 0, 2.40478 })]
    [InlineData(381, new[] { 0.00741378, 2.78646 })]
    [InlineData(895, new[] { 0.00910095, 0, 0, 0, 2.83293 })]
    [InlineData(3153, new[] { 0, 2.53145, 2.22295 })]
    [InlineData(5685, new[] { 1.26209, 1.75706 })]
    [InlineData(7456, new[] { 2.18419, 0.154078, 2.40125 })]
    [InlineData(9797, new[] { 1.4269, 0.0941934, 2.66689 })]
    public void Of_two_summits_the_higher_one_is_found(int number, double[] summit)
    {
        var (sample, _) = RandomNesting.Number(number);
        var best = Best(sample, VariancePrior.None);

        foreach (var (rank, variance) in summit.Index())
        {
            Assert.Equal(variance, best[rank], 1e-5);
        }
    }

    private static RankVariances Best(NestedSample sample, VariancePrior prior) =>
        VarianceEstimationTests.Fitted(sample, prior, LikelihoodKind.Restricted).Variances;

    private static double Height(NestedSample sample, RankVariances at) =>
        NestedLikelihood.Compute(sample, at).Restricted;

    /// <summary>Near the summit and far from it; every variance 0 now and then.</summary>
    private static IEnumerable<RankVariances> Others(int number, RankVariances best)
    {
        var random = new Random(number);
        for (var k = 0; k < 300; k++)
        {
            var reach = k % 2 == 0 ? 0.02 : 5;
            var other = best.Values.Select(s => random.Next(10) == 0 ? 0
                : (s > 0 ? s : 0.01 * random.NextDouble())
                    * Math.Exp(reach * (2 * random.NextDouble() - 1))).ToArray();
            other[^1] = best.Residual * Math.Exp(reach * (2 * random.NextDouble() - 1));
            yield return RankVariances.From(other);
        }
    }

    private static string Print(RankVariances best, RankVariances other) =>
        $"{string.Join(" ", best.Values)} loses to {string.Join(" ", other.Values)}";
}
