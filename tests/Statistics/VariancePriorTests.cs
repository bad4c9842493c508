using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

public class VariancePriorTests
{
    private static readonly double?[] Ten = [24, 25, 23, 26, 24.5, 22, 27, 25, 24, 25.5];

    // One group: REML of the leaves is the sample variance, with n - 1 contrasts of sum of
    // squares q; the prior adds one effect of size c, so (q + c)/(n - 1 + 1) solves the slope
    // and a rank that no value speaks about stays at c. Algebra from the density's definition.
    [Fact]
    public void Ten_leaves_of_one_group_get_variances_in_closed_form()
    {
        var tree = NestedTree.FromParents([[0], [0], new int[10]]);
        var known = Ten.Select(y => y!.Value).ToArray();
        var squares = known.Sum(y => Math.Pow(y - known.Average(), 2));
        var centre = squares / 9 / 3;

        var fit = Fitted(tree, Ten, VariancePrior.Weak);

        Assert.Equal((squares + centre) / 10, fit.Variances.Residual, 1e-9);
        Assert.Equal(centre, fit.Variances[0], 1e-9);
        Assert.Equal(centre, fit.Variances[1], 1e-9);
    }

    [Fact]
    public void A_known_scatter_alone_is_the_fit_to_a_single_value()
    {
        var tree = NestedTree.FromParents([[0], [0, 0]]);

        var fit = Fitted(tree, [24, null], VariancePrior.Around(6));

        Assert.Equal(3, fit.Variances[0], 1e-9);
        Assert.Equal(3, fit.Variances.Residual, 1e-9);
        Assert.Equal(24, fit.Predictions.WithoutOwnValue(1)!.Mean, 1e-12);
    }

    [Fact]
    public void Values_all_alike_can_be_fitted_where_the_scatter_is_known()
    {
        var tree = NestedTree.FromParents([[0, 0], [0, 0, 1, 1]]);

        var fit = Fitted(tree, [7, 7, 7, 7], VariancePrior.Around(2));

        // Slope by ln s of the leaves' share: -(n - groups)/2 - ν/2 + νc/2s; c = 1, n - g = 2.
        Assert.InRange(fit.Variances.Residual, 0.2, 0.5);
        Assert.InRange(fit.Variances[0], 0.2, 1);
    }

    [Fact]
    public void A_boundary_variance_is_small_but_not_zero_under_the_weak_prior()
    {
        var fit = VarianceEstimationTests.Fitted(
            NestedCase.Named("Dyestuff2").Sample(),
            VariancePrior.Weak,
            LikelihoodKind.Restricted);

        // The sample variance is 13.806; half of it is the prior's c, worth one batch of six.
        Assert.InRange(fit.Variances[0], 13.806 / 2 / 12, 13.806 / 4);
    }

    [Fact]
    public void The_weak_prior_hardly_moves_a_well_known_variance()
    {
        var sample = NestedCase.Named("Oxide").Sample();
        var plain = VarianceEstimationTests.Fitted(
            sample, VariancePrior.None, LikelihoodKind.Restricted).Variances;
        var weak = VarianceEstimationTests.Fitted(
            sample, VariancePrior.Weak, LikelihoodKind.Restricted).Variances;

        // 24 wafers with 48 degrees of freedom for the sites: a few per cent at most.
        Assert.InRange(weak.Residual / plain.Residual, 0.95, 1.10);
        Assert.InRange(weak[1] / plain[1], 0.9, 1.15);
    }

    // Scaled inverse chi-square: with a prior of growing worth the fit tends to its centre.
    [Fact]
    public void A_prior_worth_a_million_effects_is_the_answer()
    {
        var fit = Fitted(
            NestedTree.FromParents([[0, 0, 0], [0, 0, 0, 1, 1, 1, 2, 2, 2, 2]]),
            Ten,
            VariancePrior.Around(8, worth: 1e6));

        Assert.All(fit.Variances.Values, variance => Assert.Equal(4, variance, 1e-3));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_scatter_that_is_no_variance_is_refused(double total) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => VariancePrior.Around(total));

    // Intervals at fitted variances, on leaves the fit never saw: 300 collections of 40 values
    // in random nestings with four equal variances. Correlated within a collection, so the
    // band is wider than binomial; plain REML gave 0.78 and 0.93 in a like design.
    [Fact]
    public void Intervals_for_unseen_leaves_cover_about_what_they_claim()
    {
        var (covered80, covered95, all) = (0, 0, 0);
        for (var number = 0; number < 300; number++)
        {
            var random = new Random(number);
            var tree = RandomNesting.Tree(random, groupRanks: 3, leaves: 45);
            var truth = RandomNesting.Simulated(random, tree, RankVariances.From(1, 1, 1, 1), 25);
            var fit = Fitted(
                tree,
                [.. Enumerable.Range(0, 45).Select(leaf => leaf < 40 ? truth[leaf] : null)],
                VariancePrior.Weak);
            foreach (var leaf in Enumerable.Range(40, 5))
            {
                var forecast = fit.Predictions.WithoutOwnValue(leaf)!;
                all++;
                covered80 += forecast.CentralInterval(0.80).Contains(truth[leaf]!.Value) ? 1 : 0;
                covered95 += forecast.CentralInterval(0.95).Contains(truth[leaf]!.Value) ? 1 : 0;
            }
        }

        Assert.InRange((double)covered80 / all, 0.75, 0.85);
        Assert.InRange((double)covered95 / all, 0.91, 0.97);
    }

    private static Fit Fitted(NestedTree tree, double?[] values, VariancePrior prior) =>
        VarianceEstimationTests.Fitted(
            NestedSample.From(tree, values), prior, LikelihoodKind.Restricted);
}
