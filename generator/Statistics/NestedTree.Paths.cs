namespace CareSheets.Statistics;

public sealed partial class NestedTree
{
    /// <summary>
    /// Builds the tree from one path per leaf: the names of its groups, uppermost first. Names
    /// are compared ordinally and only within one parent, so two groups called alike under
    /// different parents stay two. Groups are numbered as they first appear, leaves as listed.
    /// </summary>
    /// <exception cref="ArgumentException">Paths differ in length.</exception>
    public static NestedTree FromPaths(IReadOnlyList<IReadOnlyList<string>> paths)
    {
        var groupRanks = paths.Count == 0 ? 0 : paths[0].Count;
        if (paths.Any(path => path.Count != groupRanks))
        {
            throw new ArgumentException("Every leaf needs a group at every rank.");
        }

        var parents = new int[groupRanks + 1][];
        var above = new int[paths.Count];
        for (var rank = 0; rank < groupRanks; rank++)
        {
            parents[rank] = NumberGroups(paths, rank, above);
        }

        parents[groupRanks] = above;
        return new NestedTree(parents);
    }

    /// <summary>
    /// Numbers the groups of one rank; <paramref name="above"/> holds each leaf's group of the
    /// rank above and is moved down to this rank.
    /// </summary>
    private static int[] NumberGroups(
        IReadOnlyList<IReadOnlyList<string>> paths, int rank, int[] above)
    {
        var known = new Dictionary<(int Parent, string Name), int>();
        var parents = new List<int>();
        for (var leaf = 0; leaf < paths.Count; leaf++)
        {
            var key = (above[leaf], paths[leaf][rank]);
            if (known.TryAdd(key, parents.Count))
            {
                parents.Add(above[leaf]);
            }

            above[leaf] = known[key];
        }

        return [.. parents];
    }
}
