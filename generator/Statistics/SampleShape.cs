namespace CareSheets.Statistics;

/// <summary>
/// Which groups of a sample hold values at all, and so which ranks the values can speak about.
/// </summary>
internal sealed class SampleShape
{
    private readonly NestedSample _sample;
    private readonly int[] _leaves;
    private readonly int[] _groupsWithValues;

    public SampleShape(NestedSample sample)
    {
        _sample = sample;
        var tree = sample.Tree;
        _leaves = [.. Enumerable.Range(0, tree.LeafCount).Where(leaf => sample[leaf].HasValue)];
        _groupsWithValues = [.. Enumerable.Range(0, tree.LeafRank + 1).Select(CountGroups)];
    }

    /// <summary>
    /// Per rank: whether the likelihood cannot tell its variance. So with a single group, whose
    /// effect is one with the mean, and with groups that each hold one group of the next rank,
    /// whose effects only show as a sum. Without a prior such a variance is 0 by convention and
    /// the scatter belongs to the lower rank.
    /// </summary>
    public IReadOnlyList<bool> SilentRanks() =>
        [.. _groupsWithValues.Index().Select(groups => groups.Index < _sample.Tree.LeafRank
            && (groups.Item <= 1 || groups.Item == _groupsWithValues[groups.Index + 1]))];

    /// <summary>
    /// Whether the lowest groups that hold more than one value all hold equal ones.
    /// </summary>
    public bool SmallestGroupsAreFlat()
    {
        var rank = _sample.Tree.LeafRank - 1;
        while (rank >= 0 && _groupsWithValues[rank] == _leaves.Length)
        {
            rank--;
        }

        return _leaves.GroupBy(leaf => rank < 0 ? 0 : _sample.Tree.AncestorOf(leaf, rank))
            .All(group => group.All(leaf => _sample[leaf] == _sample[group.First()]));
    }

    private int CountGroups(int rank) =>
        _leaves.Select(leaf => _sample.Tree.AncestorOf(leaf, rank)).Distinct().Count();
}
