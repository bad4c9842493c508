using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

public class NestedPredictionsTests
{
    [Fact]
    public void Leave_one_out_predictions_agree_with_the_table()
    {
        foreach (var row in ReferenceFile.Rows("leave-one-out.csv"))
        {
            var predictions = At(row[0], row[1], out _);
            var numbers = row[3..].Select(ReferenceFile.Number).ToArray();

            var found = predictions.WithoutOwnValue((int)ReferenceFile.Number(row[2]) - 1)!;

            Assert.Equal(numbers[1], found.Mean, 1e-7);
            Assert.Equal(numbers[2], found.StandardDeviation, 1e-7);
            Assert.Equal(numbers[3], found.Z(numbers[0]), 1e-7);
        }
    }

    // Sums over all rows: same source as Reference/leave-one-out.csv. In a balanced one-way
    // table at its REML optimum the squared z add up to the number of values.
    [Theory]
    [InlineData("Dyestuff", "1000 3000", -162.78204121, 25.79913949)]
    [InlineData("Dyestuff", "1764.05 2451.25", -162.31595157, 30.00000000)]
    [InlineData("Pastes", "4 4 1", -96.52170952, 45.97520194)]
    public void Leave_one_out_sums_agree_with_the_table(
        string name, string variances, double logDensity, double squares)
    {
        var predictions = At(name, variances, out var sample);
        var all = Enumerable.Range(0, sample.Count)
            .Select(leaf => (Y: sample[leaf]!.Value, P: predictions.WithoutOwnValue(leaf)!))
            .ToArray();

        Assert.Equal(logDensity, -all.Sum(one => one.P.LogScore(one.Y)), 1e-7);
        Assert.Equal(squares, all.Sum(one => Math.Pow(one.P.Z(one.Y), 2)), 1e-6);
    }

    // One group of n values: z of a leave-one-out forecast at known residual variance s is
    // (y - mean of the others) / sqrt(s + s/(n-1)); elementary.
    [Fact]
    public void A_leaf_of_a_single_group_is_foretold_by_the_mean_of_the_others()
    {
        var tree = NestedTree.FromParents([[0, 0, 0, 0, 0]]);
        var sample = NestedSample.From(tree, [10, 12, 11, 13, 20]);

        var found = NestedPredictions.Compute(sample, RankVariances.From(2)).WithoutOwnValue(4)!;

        Assert.Equal(11.5, found.Mean, 1e-12);
        Assert.Equal(Math.Sqrt(2 + 2 / 4.0), found.StandardDeviation, 1e-12);
    }

    [Fact]
    public void A_value_without_any_relative_is_foretold_by_nothing()
    {
        var tree = NestedTree.FromParents([[0, 0], [0, 1]]);
        var found = NestedPredictions.Compute(
            NestedSample.From(tree, [24, null]), RankVariances.From(4, 1));

        Assert.Null(found.WithoutOwnValue(0));
        Assert.Null(found.WithoutGroup(0, 0));
        Assert.Equal(24, found.WithoutOwnValue(1)!.Mean);
        Assert.Equal(Math.Sqrt(10), found.WithoutOwnValue(1)!.StandardDeviation, 1e-12);
    }

    [Fact]
    public void Without_any_value_nothing_is_foretold()
    {
        var tree = NestedTree.FromParents([[0, 0], [0, 1, 1]]);
        var found = NestedPredictions.Compute(
            NestedSample.From(tree, [null, null, null]), RankVariances.From(4, 1));

        Assert.Null(found.Mean);
        Assert.Null(found.NewLeaf());
        Assert.Null(found.NewLeafUnder(0, 1));
        Assert.Null(found.Place(0, 0));
        Assert.Null(found.WithoutOwnValue(2));
        Assert.Equal(0, found.Effect(0, 0).Value);
        Assert.Equal(2, found.Effect(0, 0).StandardError);
    }

    [Fact]
    public void A_given_mean_is_known_without_doubt()
    {
        var sample = NestedCase.Named("Rail").Sample();

        var found = NestedPredictions.ComputeGivenMean(sample, RankVariances.From(400, 25), 60);

        Assert.Equal(60, found.Mean!.Value);
        Assert.Equal(0, found.Mean.StandardError);
        Assert.Equal(60, found.NewLeaf()!.Mean);
        Assert.Equal(Math.Sqrt(425), found.NewLeaf()!.StandardDeviation, 1e-12);
    }

    [Fact]
    public void The_place_of_a_leaf_with_a_value_is_that_value()
    {
        var predictions = At("Pastes", "4 4 1", out var sample);

        Assert.Equal(sample[7]!.Value, predictions.Place(2, 7)!.Value);
        Assert.Equal(0, predictions.Place(2, 7)!.StandardError);
    }

    [Fact]
    public void A_missing_leaf_is_foretold_as_the_next_leaf_of_its_group()
    {
        var tree = NestedTree.FromParents([[0, 0], [0, 0, 1], [0, 0, 1, 2, 2]]);
        var found = NestedPredictions.Compute(
            NestedSample.From(tree, [1, null, 3, 5, 6]), RankVariances.From(3, 2, 1));

        Assert.Equal(found.NewLeafUnder(1, 0)!.Mean, found.WithoutOwnValue(1)!.Mean, 1e-14);
        Assert.Equal(
            found.NewLeafUnder(1, 0)!.StandardDeviation,
            found.WithoutOwnValue(1)!.StandardDeviation,
            1e-14);
    }

    [Fact]
    public void Variances_that_do_not_fit_the_ranks_are_refused()
    {
        var sample = NestedCase.Named("Pastes").Sample();

        Assert.Throws<ArgumentException>(
            () => NestedPredictions.Compute(sample, RankVariances.From(4, 1)));
    }

    private static NestedPredictions At(string name, string variances, out NestedSample sample)
    {
        sample = NestedCase.Named(name).Sample();
        double[] numbers = [.. variances.Split(' ').Select(ReferenceFile.Number)];
        return NestedPredictions.Compute(sample, RankVariances.From(numbers));
    }
}
