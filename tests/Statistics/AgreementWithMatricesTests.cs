using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

/// <summary>
/// The passes over the tree against dense matrices (<see cref="DenseModel"/>), 200 trees,
/// relative 1e-9.
/// </summary>
public class AgreementWithMatricesTests
{
    private const double Digits = 1e-9;

    public static TheoryData<int> Trees { get; } = [.. Enumerable.Range(0, 200)];

    [Theory]
    [MemberData(nameof(Trees))]
    public void Likelihoods_mean_and_effects_are_those_of_the_matrices(int number)
    {
        var (sample, variances) = RandomNesting.Number(number);
        var dense = new DenseModel(sample, variances);
        var likelihood = NestedLikelihood.Compute(sample, variances);
        var predictions = NestedPredictions.Compute(sample, variances);

        AssertClose(dense.Restricted, likelihood.Restricted);
        AssertClose(dense.Full, likelihood.Full);
        AssertClose(dense.Mean, likelihood.Mean.Value);
        AssertClose(1 / Math.Sqrt(dense.MeanPrecision), likelihood.Mean.StandardError);
        AssertClose(dense.Mean, predictions.Mean!.Value);
        foreach (var (rank, node) in Groups(sample.Tree))
        {
            AssertClose(dense.Effect(rank, node), predictions.Effect(rank, node));
            AssertClose(dense.Place(rank, node), predictions.Place(rank, node)!);
        }
    }

    [Theory]
    [MemberData(nameof(Trees))]
    public void A_leaf_without_its_value_is_foretold_as_by_a_refit_without_its_row(int number)
    {
        var (sample, variances) = RandomNesting.Number(number);
        var predictions = NestedPredictions.Compute(sample, variances);
        for (var leaf = 0; leaf < sample.Tree.LeafCount; leaf++)
        {
            var refit = new DenseModel(sample, variances, other => other != leaf);

            AssertClose(refit.Leaf(leaf), predictions.WithoutOwnValue(leaf)!);
        }
    }

    [Theory]
    [MemberData(nameof(Trees))]
    public void A_leaf_without_its_group_is_foretold_as_by_a_refit_without_the_group(int number)
    {
        var (sample, variances) = RandomNesting.Number(number);
        var tree = sample.Tree;
        var predictions = NestedPredictions.Compute(sample, variances);
        foreach (var (rank, node) in Groups(tree))
        {
            var refit = new DenseModel(
                sample, variances, leaf => tree.AncestorOf(leaf, rank) != node);
            foreach (var leaf in Enumerable.Range(0, tree.LeafCount)
                .Where(leaf => tree.AncestorOf(leaf, rank) == node))
            {
                var found = predictions.WithoutGroup(leaf, rank);
                Assert.Equal(refit.IsEmpty, found is null);
                if (found is not null)
                {
                    AssertClose(refit.Leaf(leaf), found);
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Trees))]
    public void A_new_leaf_is_foretold_as_a_leaf_added_without_a_value(int number)
    {
        var (sample, variances) = RandomNesting.Number(number);
        var predictions = NestedPredictions.Compute(sample, variances);
        foreach (var (rank, node) in Groups(sample.Tree).Append((-1, 0)))
        {
            var grown = Grown(sample, rank, node);
            var refit = new DenseModel(grown, variances);

            var found = rank < 0 ? predictions.NewLeaf() : predictions.NewLeafUnder(rank, node);

            AssertClose(refit.Leaf(grown.Tree.LeafCount - 1), found!);
        }
    }

    /// <summary>The sample with one leaf more, on new nodes all the way up to a group.</summary>
    private static NestedSample Grown(NestedSample sample, int rank, int node)
    {
        var tree = sample.Tree;
        var parents = new List<int[]>();
        for (var r = 0; r <= tree.LeafRank; r++)
        {
            var old = Enumerable.Range(0, tree.CountAt(r)).Select(n => tree.ParentOf(r, n));
            var parent = r == rank + 1 ? node : r == 0 ? 0 : tree.CountAt(r - 1);
            parents.Add(r <= rank ? [.. old] : [.. old, parent]);
        }

        double?[] values =
            [.. Enumerable.Range(0, tree.LeafCount).Select(leaf => sample[leaf]), null];
        return NestedSample.From(NestedTree.FromParents(parents), values);
    }

    private static IEnumerable<(int Rank, int Node)> Groups(NestedTree tree) =>
        from rank in Enumerable.Range(0, tree.LeafRank)
        from node in Enumerable.Range(0, tree.CountAt(rank))
        select (rank, node);

    private static void AssertClose((double Value, double Variance) expected, Normal actual)
    {
        AssertClose(expected.Value, actual.Mean);
        AssertClose(Math.Sqrt(expected.Variance), actual.StandardDeviation);
    }

    private static void AssertClose(
        (double Value, double Variance) expected, NodeEstimate actual)
    {
        AssertClose(expected.Value, actual.Value);

        // The matrices subtract numbers near the total variance, and leave about 1e-14.
        AssertClose(expected.Variance, actual.StandardError * actual.StandardError);
    }

    private static void AssertClose(double expected, double actual) =>
        Assert.Equal(expected, actual, Digits * Math.Max(1, Math.Abs(expected)));
}
