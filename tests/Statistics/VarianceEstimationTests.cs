using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

/// <summary>Values: Reference/nested-effects.json (published optima, lme4 1.1-31).</summary>
public class VarianceEstimationTests
{
    public static TheoryData<string, LikelihoodKind> Optima { get; } = Pairs();

    [Theory]
    [MemberData(nameof(Optima))]
    public void Without_a_prior_the_published_optimum_is_found(string name, LikelihoodKind kind)
    {
        var known = NestedCase.Named(name);
        var optimum = known.Optima.Single(one => one.Likelihood == kind);

        var fit = Fitted(known.Sample(), VariancePrior.None, kind);

        foreach (var (rank, variance) in optimum.Variances.Index())
        {
            Assert.Equal(variance, fit.Variances[rank], 1e-5 * variance);
        }

        var found = kind == LikelihoodKind.Full ? fit.Likelihood.Full : fit.Likelihood.Restricted;
        Assert.Equal(optimum.LogLikelihood, found, 1e-6);
        Assert.Equal(optimum.Mean, fit.Likelihood.Mean.Value, 1e-6);
        Assert.Equal(optimum.StandardError, fit.Likelihood.Mean.StandardError, 2e-6);
        foreach (var effects in optimum.Effects ?? [])
        {
            AssertEffects(effects, fit);
        }
    }

    // Closed forms from the mean squares of a balanced design (Searle, Casella and McCulloch
    // 1992, Variance Components, ch. 4). Dyestuff: 11271.5 between and 2451.25 within batches,
    // 5 values each. Turnip: 2.520115, 0.328775 and 0.006654 with 6 and 2 values (SAS/STAT
    // documentation, PROC NESTED example).
    [Fact]
    public void Balanced_optima_are_the_mean_squares_solved()
    {
        var dyestuff = Fitted("Dyestuff", LikelihoodKind.Restricted).Variances;
        var full = Fitted("Dyestuff", LikelihoodKind.Full).Variances;
        var turnip = Fitted("Turnip", LikelihoodKind.Restricted).Variances;

        Assert.Equal(2451.25, dyestuff.Residual, 1e-6);
        Assert.Equal((11271.5 - 2451.25) / 5, dyestuff[0], 1e-5);
        Assert.Equal((5 * 11271.5 / 6 - 2451.25) / 5, full[0], 1e-5);
        Assert.Equal((2.520115 - 0.328775) / 6, turnip[0], 2e-7);
        Assert.Equal((0.328775 - 0.006654) / 2, turnip[1], 1e-6);
        Assert.Equal(0.006654, turnip.Residual, 5e-7);
    }

    // Box and Tiao 1973, Table 5.1.4: less scatter between batches than within.
    [Theory]
    [InlineData(LikelihoodKind.Restricted, 29)]
    [InlineData(LikelihoodKind.Full, 30)]
    public void A_variance_on_the_boundary_is_exactly_zero(LikelihoodKind kind, int divisor)
    {
        var sample = NestedCase.Named("Dyestuff2").Sample();
        var values = Enumerable.Range(0, 30).Select(leaf => sample[leaf]!.Value).ToArray();
        var squares = values.Sum(y => Math.Pow(y - values.Average(), 2));

        var fit = Fitted(sample, VariancePrior.None, kind);

        Assert.Equal(0.0, fit.Variances[0]);
        Assert.Equal(squares / divisor, fit.Variances.Residual, 1e-8);
        Assert.All(Enumerable.Range(0, 6), batch =>
            Assert.Equal(0.0, fit.Predictions.Effect(0, batch).Value));
    }

    [Fact]
    public void The_optimum_of_the_unbalanced_pastes_leaves_the_tabulated_standard_errors()
    {
        // lme4 1.1-31, condVar: batches A, B, F; casks A:a, B:a, F:c.
        var sample = NestedCase.Named("Pastes, unbalanced").Sample();
        var fit = Fitted(sample, VariancePrior.None, LikelihoodKind.Restricted);
        var given = NestedPredictions.ComputeGivenMean(
            sample, fit.Variances, fit.Likelihood.Mean.Value);

        Assert.Equal(1.015390, given.Effect(0, 0).StandardError, 2e-6);
        Assert.Equal(1.081773, given.Effect(0, 1).StandardError, 2e-6);
        Assert.Equal(1.160096, given.Effect(0, 5).StandardError, 2e-6);
        Assert.Equal(1.208826, given.Effect(1, 0).StandardError, 2e-6);
        AssertCask(fit, given, 3, -0.040379, 1.257899);
        AssertCask(fit, given, 14, 0.155738, 1.243250);
        Assert.Equal(1.820407, fit.Predictions.Effect(1, 0).Value, 2e-6);
        Assert.Equal(2.746740, fit.Predictions.Effect(1, 6).Value, 2e-6);
        Assert.Equal(-4.603286, fit.Predictions.Effect(1, 21).Value, 2e-6);
    }

    [Fact]
    public void The_same_sample_gives_the_same_bits()
    {
        var first = Fitted("Oxide", LikelihoodKind.Restricted).Variances.Values;

        Assert.Equal(first, Fitted("Oxide", LikelihoodKind.Restricted).Variances.Values);
    }

    internal static Fit Fitted(NestedSample sample, VariancePrior prior, LikelihoodKind kind)
    {
        var outcome = VarianceEstimation.Estimate(sample, prior, kind);
        Assert.True(outcome.IsFitted, $"{outcome.Problem}");
        return outcome.Fit;
    }

    private static Fit Fitted(string name, LikelihoodKind kind) =>
        Fitted(NestedCase.Named(name).Sample(), VariancePrior.None, kind);

    private static void AssertCask(
        Fit fit, NestedPredictions given, int cask, double effect, double error)
    {
        Assert.Equal(effect, fit.Predictions.Effect(1, cask).Value, 2e-6);
        Assert.Equal(error, given.Effect(1, cask).StandardError, 2e-6);
    }

    // Effects at an optimum are tabulated to 6 decimals.
    private static void AssertEffects(NestedCase.Effects effects, Fit fit)
    {
        foreach (var (offset, value) in effects.Values.Index())
        {
            var found = fit.Predictions.Effect(effects.Rank, effects.First + offset);
            Assert.Equal(value, found.Value, 2e-6);
        }
    }

    private static TheoryData<string, LikelihoodKind> Pairs()
    {
        var pairs = new TheoryData<string, LikelihoodKind>();
        foreach (var known in NestedCase.All)
        {
            foreach (var optimum in known.Optima)
            {
                pairs.Add(known.Name, optimum.Likelihood);
            }
        }

        return pairs;
    }
}
