namespace CareSheets.Statistics;

/// <summary>
/// A classification of groups within groups: a rooted tree whose leaves all hang at one depth.
/// </summary>
/// <remarks>
/// Ranks count from 0, the groups directly under the root, down to <see cref="LeafRank"/>, the
/// leaves. Nodes of one rank are numbered from 0 in any order. A node may have one child or
/// none; the number of children may differ from node to node.
/// </remarks>
public sealed partial class NestedTree
{
    private readonly int[][] _parents;

    private NestedTree(int[][] parents) => _parents = parents;

    /// <summary>The number of group ranks above the leaves; 0: leaves hang on the root.</summary>
    public int LeafRank => _parents.Length - 1;

    public int LeafCount => CountAt(LeafRank);

    /// <summary>
    /// Builds the tree from one list per rank, root downwards and leaves last: item i of list r
    /// is the number of the rank r - 1 node that holds node i of rank r. The first list is all
    /// zeros, the root.
    /// </summary>
    /// <exception cref="ArgumentException">No rank, or a parent that does not exist.</exception>
    public static NestedTree FromParents(IReadOnlyList<IReadOnlyList<int>> parents)
    {
        if (parents.Count == 0)
        {
            throw new ArgumentException("A tree needs at least the rank of its leaves.");
        }

        var copy = parents.Select(rank => rank.ToArray()).ToArray();
        for (var rank = 0; rank < copy.Length; rank++)
        {
            RefuseStrangers(copy[rank], rank == 0 ? 1 : copy[rank - 1].Length, rank);
        }

        return new NestedTree(copy);
    }

    public int CountAt(int rank) => ParentsAt(rank).Length;

    /// <summary>The number, at the rank above, of the node that holds this one.</summary>
    public int ParentOf(int rank, int node) => ParentsAt(rank)[node];

    /// <summary>The number of the group of the given rank in which a leaf lies.</summary>
    public int AncestorOf(int leaf, int rank)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(rank);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(rank, LeafRank);
        var node = leaf;
        for (var below = LeafRank; below > rank; below--)
        {
            node = _parents[below][node];
        }

        return node;
    }

    internal ReadOnlySpan<int> ParentsAt(int rank)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(rank);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(rank, LeafRank);
        return _parents[rank];
    }

    private static void RefuseStrangers(int[] parents, int parentCount, int rank)
    {
        if (parents.Any(parent => parent < 0 || parent >= parentCount))
        {
            throw new ArgumentException($"Rank {rank} names a parent that does not exist.");
        }
    }
}
