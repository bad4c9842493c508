using CareSheets.Statistics;
using CareSheets.Tests.Support;
using Xunit;
using Xunit.Abstractions;

namespace CareSheets.Tests.Statistics;

public class NestedSpeedTests(ITestOutputHelper output)
{
    private const int Responses = 12;

    private const double MostRatio = 30;

    // Fits and leave-one-out forecasts of every leaf. Ten times the leaves may cost thirty
    // times the time at most: ten is what they need, a quadratic step would cost a hundred, and thirty
    // lies half-way between on a scale of ratios (15.1 was seen once on a machine at full load).
    [Fact]
    [Trait("Speed", "Slow")]
    public void Ten_times_the_leaves_cost_about_ten_times_the_time()
    {
        var few = Trial(1_000);
        var many = Trial(10_000);
        FitAndPredict(few);
        var ratio = SpeedRatio.Of(() => FitAndPredict(many), () => FitAndPredict(few), MostRatio);
        output.WriteLine($"{Responses} responses, 10 000 leaves against 1 000: ratio {ratio:F1}");
        Assert.True(ratio < MostRatio, $"{ratio:F1}");
    }

    private static void FitAndPredict(IReadOnlyList<NestedSample> trial)
    {
        var forecasts = 0;
        foreach (var sample in trial)
        {
            var outcome = VarianceEstimation.Estimate(sample, VariancePrior.Weak);
            Assert.True(outcome.IsFitted);
            forecasts += Enumerable.Range(0, sample.Tree.LeafCount)
                .Count(leaf => outcome.Fit.Predictions.WithoutOwnValue(leaf) is not null);
        }

        Assert.Equal(trial.Sum(sample => sample.Tree.LeafCount), forecasts);
    }

    private static NestedSample[] Trial(int leaves)
    {
        var tree = Proportional(leaves / 50, leaves / 10, leaves / 3, leaves);
        return [.. Enumerable.Range(0, Responses).Select(response => RandomNesting.Simulated(
            new Random(response), tree, RankVariances.From(4, 2, 1, 1), mean: 25))];
    }

    /// <summary>The same shape at any size, so that only the size differs.</summary>
    private static NestedTree Proportional(params int[] counts) =>
        NestedTree.FromParents([.. counts.Select((count, rank) =>
        {
            var above = rank == 0 ? 1 : counts[rank - 1];
            return Enumerable.Range(0, count)
                .Select(node => (int)((long)node * above / count)).ToArray();
        })]);
}
