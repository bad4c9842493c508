using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

public class FitProblemTests
{
    private static readonly NestedTree Pairs = NestedTree.FromParents([[0, 0], [0, 0, 1, 1]]);

    [Theory]
    [InlineData(null, null, null, null, 0)]
    [InlineData(null, 24.0, null, null, 1)]
    public void Fewer_than_two_values_are_too_few(
        double? a, double? b, double? c, double? d, int had)
    {
        Assert.Equal(
            new FitProblem(FitProblemKind.TooFew, 2, had),
            Problem(VariancePrior.Weak, a, b, c, d));
        Assert.Equal(
            new FitProblem(FitProblemKind.TooFew, 2, had),
            Problem(VariancePrior.None, a, b, c, d));
    }

    [Fact]
    public void Even_a_known_scatter_needs_one_value() => Assert.Equal(
        new FitProblem(FitProblemKind.TooFew, 1, 0),
        Problem(VariancePrior.Around(3), null, null, null, null));

    [Fact]
    public void Values_all_alike_have_no_variance()
    {
        var expected = new FitProblem(FitProblemKind.NoVariance, 2, 4);

        Assert.Equal(expected, Problem(VariancePrior.Weak, 24, 24, 24, 24));
        Assert.Equal(expected, Problem(VariancePrior.None, 24, 24, 24, 24));
        Assert.Equal(expected, Problem(VariancePrior.Weak, 0, 1e-120, 0, 1e-120));
    }

    [Fact]
    public void Groups_alike_within_let_the_residual_vanish_unless_a_prior_holds_it()
    {
        Assert.Equal(
            new FitProblem(FitProblemKind.ResidualVanishes, 2, 4),
            Problem(VariancePrior.None, 24, 24, 26, 26));
        Assert.Null(Problem(VariancePrior.Weak, 24, 24, 26, 26));
        Assert.Null(Problem(VariancePrior.None, 24, 24, 26, 26.5));
    }

    [Fact]
    public void Two_values_in_two_groups_are_enough()
    {
        var sample = NestedSample.From(Pairs, [24, null, 26, null]);

        var fit = VarianceEstimation.Estimate(sample, VariancePrior.None).Fit!;

        // The two ranks only show as a sum; by convention the lower one has all of it: s² = 2.
        Assert.Equal(0.0, fit.Variances[0]);
        Assert.Equal(2, fit.Variances.Residual, 1e-8);
    }

    // Values up to the largest allowed, and as small as squares allow.
    [Theory]
    [InlineData(1e100)]
    [InlineData(1e-95)]
    public void Extreme_scales_are_fitted_like_any_other(double scale)
    {
        double?[] values = [0.1, 0.3, 0.9, 1];
        var plain = VarianceEstimation.Estimate(
            NestedSample.From(Pairs, values), VariancePrior.Weak).Fit!;
        var scaled = VarianceEstimation.Estimate(
            NestedSample.From(Pairs, [.. values.Select(y => y * scale)]), VariancePrior.Weak).Fit!;

        for (var rank = 0; rank < 2; rank++)
        {
            var expected = plain.Variances[rank] * scale * scale;
            Assert.Equal(1, scaled.Variances[rank] / expected, 1e-6);
        }
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(1.1e100)]
    public void A_value_that_is_not_usable_is_refused_at_the_door(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(
            () => NestedSample.From(Pairs, [1, 2, 3, value]));

    private static FitProblem? Problem(VariancePrior prior, params double?[] values) =>
        VarianceEstimation.Estimate(NestedSample.From(Pairs, values), prior).Problem;
}
