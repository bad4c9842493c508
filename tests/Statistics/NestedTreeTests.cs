using CareSheets.Statistics;
using Xunit;

namespace CareSheets.Tests.Statistics;

public class NestedTreeTests
{
    [Fact]
    public void Paths_number_groups_as_they_first_appear()
    {
        var tree = NestedTree.FromPaths([["b", "x"], ["a", "x"], ["b", "y"], ["b", "x"]]);

        Assert.Equal(2, tree.LeafRank);
        Assert.Equal([2, 3, 4], Enumerable.Range(0, 3).Select(tree.CountAt));
        Assert.Equal([0, 1, 2, 0], Enumerable.Range(0, 4).Select(leaf => tree.AncestorOf(leaf, 1)));
        Assert.Equal([0, 1, 0, 0], Enumerable.Range(0, 4).Select(leaf => tree.AncestorOf(leaf, 0)));
        Assert.Equal([0, 1, 0], Enumerable.Range(0, 3).Select(group => tree.ParentOf(1, group)));
    }

    [Fact]
    public void Groups_called_alike_under_two_parents_are_two()
    {
        var tree = NestedTree.FromPaths([["a", "x"], ["b", "x"]]);

        Assert.NotEqual(tree.AncestorOf(0, 1), tree.AncestorOf(1, 1));
    }

    [Fact]
    public void Leaves_may_hang_on_the_root()
    {
        var tree = NestedTree.FromPaths([[], [], []]);

        Assert.Equal(0, tree.LeafRank);
        Assert.Equal(3, tree.LeafCount);
    }

    [Fact]
    public void A_leaf_is_its_own_ancestor_at_its_own_rank() =>
        Assert.Equal(1, NestedTree.FromParents([[0], [0, 0]]).AncestorOf(1, 1));

    [Fact]
    public void Paths_of_different_length_are_refused() => Assert.Throws<ArgumentException>(
        () => NestedTree.FromPaths([["a"], ["a", "b"]]));

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void A_parent_that_does_not_exist_is_refused(int parent) =>
        Assert.Throws<ArgumentException>(() => NestedTree.FromParents([[0], [0, parent]]));

    [Fact]
    public void A_tree_without_ranks_is_refused() =>
        Assert.Throws<ArgumentException>(() => NestedTree.FromParents([]));

    [Theory]
    [InlineData(-1)]
    [InlineData(2)]
    public void A_rank_the_tree_does_not_have_is_refused(int rank) =>
        Assert.Throws<ArgumentOutOfRangeException>(
            () => NestedTree.FromParents([[0], [0, 0]]).AncestorOf(0, rank));

    [Fact]
    public void Changing_the_lists_afterwards_does_not_change_the_tree()
    {
        int[] leaves = [0, 1];
        double?[] values = [1, 2];
        var tree = NestedTree.FromParents([[0, 0], leaves]);
        var sample = NestedSample.From(tree, values);

        (leaves[0], values[0]) = (1, 9);

        Assert.Equal(0, tree.ParentOf(1, 0));
        Assert.Equal(1.0, sample[0]);
    }

    [Fact]
    public void Every_leaf_needs_its_value_or_its_null() => Assert.Throws<ArgumentException>(
        () => NestedSample.From(NestedTree.FromParents([[0, 0]]), [1]));

    [Fact]
    public void Variances_are_refused_unless_finite_with_a_residual_above_zero()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => RankVariances.From());
        Assert.Throws<ArgumentOutOfRangeException>(() => RankVariances.From(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => RankVariances.From(-1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => RankVariances.From(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => RankVariances.From(1, double.PositiveInfinity));
    }

    [Fact]
    public void The_variance_below_a_rank_is_the_sum_of_the_lower_ones()
    {
        var variances = RankVariances.From(4, 2, 1);

        Assert.Equal([7, 3, 1, 0], Enumerable.Range(-1, 4).Select(variances.Below));
        Assert.Equal(7, variances.Total);
    }
}
