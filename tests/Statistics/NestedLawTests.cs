using CareSheets.Statistics;
using CsCheck;
using Xunit;

namespace CareSheets.Tests.Statistics;

/// <summary>What must hold whatever the numbers are.</summary>
public class NestedLawTests
{
    private const string Start = "0N0XIzNsQ0O2";

    private static readonly Gen<int> Numbers = Gen.Int[1000, 9000];

    public static TheoryData<bool> Priors { get; } = [true, false];

    [Theory]
    [MemberData(nameof(Priors))]
    public void Shifting_all_values_shifts_the_predictions_and_leaves_the_variances(bool hasPrior)
    {
        Gen.Select(Numbers, Gen.Double[-1000, 1000]).Sample(
            (number, shift) =>
            {
                var (sample, _) = RandomNesting.Number(number);
                return Fits(sample, sample.Tree, hasPrior, y => y + shift, (before, after) =>
                    SameVariances(before, after, 1) && SameForecasts(before, after, sample.Tree,
                        mean => mean + shift, sd => sd));
            },
            null, Start, 150);
    }

    [Theory]
    [MemberData(nameof(Priors))]
    public void Scaling_all_values_scales_the_predictions_and_their_doubt(bool hasPrior)
    {
        Gen.Select(Numbers, Gen.Double[-3, 3]).Sample(
            (number, power) =>
            {
                var scale = Math.Pow(10, power);
                var (sample, _) = RandomNesting.Number(number);
                return Fits(sample, sample.Tree, hasPrior, y => y * scale, (before, after) =>
                    SameVariances(before, after, scale * scale) && SameForecasts(
                        before, after, sample.Tree, mean => mean * scale, sd => sd * scale));
            },
            null, Start, 150);
    }

    [Theory]
    [MemberData(nameof(Priors))]
    public void Renumbering_the_groups_changes_nothing(bool hasPrior)
    {
        Numbers.Sample(
            number =>
            {
                var (sample, _) = RandomNesting.Number(number);
                return Fits(sample, Renumbered(sample.Tree, number), hasPrior, y => y,
                    (before, after) => SameVariances(before, after, 1)
                        && SameForecasts(before, after, sample.Tree, mean => mean, sd => sd));
            },
            null, Start, 150);
    }

    [Fact]
    public void A_value_closer_to_its_forecast_is_never_less_probable()
    {
        Gen.Select(Numbers, Gen.Double[0, 1]).Sample(
            (number, share) =>
            {
                var (sample, variances) = RandomNesting.Number(number);
                var forecast = NestedPredictions.Compute(sample, variances).WithoutOwnValue(0)!;
                var far = sample[0]!.Value;
                var near = forecast.Mean + share * (far - forecast.Mean);
                return TailProbability.TwoSidedNormal(forecast.Z(near)) + 1e-15
                    >= TailProbability.TwoSidedNormal(forecast.Z(far));
            },
            null, Start, 300);
    }

    private static bool Fits(
        NestedSample sample,
        NestedTree tree,
        bool hasPrior,
        Func<double, double> change,
        Func<Fit, Fit, bool> law)
    {
        var prior = hasPrior ? VariancePrior.Weak : VariancePrior.None;
        var changed = Enumerable.Range(0, tree.LeafCount)
            .Select(leaf => sample[leaf] is { } y ? change(y) : (double?)null);
        var before = VarianceEstimation.Estimate(sample, prior);
        var after = VarianceEstimation.Estimate(NestedSample.From(tree, [.. changed]), prior);
        return before.IsFitted && after.IsFitted
            ? law(before.Fit, after.Fit)
            : before.Problem == after.Problem;
    }

    private static bool SameVariances(Fit before, Fit after, double factor) =>
        before.Variances.Values.Zip(after.Variances.Values).All(pair =>
            Near(pair.First * factor, pair.Second, before.Variances.Total * factor));

    private static bool SameForecasts(
        Fit before,
        Fit after,
        NestedTree tree,
        Func<double, double> mean,
        Func<double, double> deviation) =>
        Enumerable.Range(0, tree.LeafCount).All(leaf =>
        {
            var (old, now) = (before.Predictions.WithoutOwnValue(leaf)!,
                after.Predictions.WithoutOwnValue(leaf)!);
            var size = deviation(old.StandardDeviation);
            return Near(mean(old.Mean), now.Mean, size) && Near(size, now.StandardDeviation, size);
        });

    // Optima are found to about 1e-7 of the total variance, and forecasts follow them.
    private static bool Near(double expected, double actual, double size) =>
        Math.Abs(expected - actual) <= 1e-5 * size;

    /// <summary>The same groups with their numbers dealt anew; leaves keep theirs.</summary>
    private static NestedTree Renumbered(NestedTree tree, int number)
    {
        var random = new Random(number);
        var parents = new List<int[]>();
        int[] above = [0];
        for (var rank = 0; rank <= tree.LeafRank; rank++)
        {
            var deal = Enumerable.Range(0, tree.CountAt(rank)).ToArray();
            if (rank < tree.LeafRank)
            {
                random.Shuffle(deal);
            }

            var dealt = new int[deal.Length];
            foreach (var (node, place) in deal.Index())
            {
                dealt[place] = above[tree.ParentOf(rank, node)];
            }

            parents.Add(dealt);
            above = deal;
        }

        return NestedTree.FromParents(parents);
    }
}
