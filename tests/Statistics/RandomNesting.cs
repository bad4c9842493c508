using CareSheets.Statistics;

namespace CareSheets.Tests.Statistics;

/// <summary>
/// Trees of chance, reproducible by number: unbalanced, with only children, empty groups, nodes
/// in any order, leaves without values and ranks without variance.
/// </summary>
internal static class RandomNesting
{
    public static (NestedSample Sample, RankVariances Variances) Number(int number)
    {
        var random = new Random(20261125 + number);
        var tree = Tree(random, groupRanks: random.Next(5), leaves: 3 + random.Next(40));
        var values = Enumerable.Range(0, tree.LeafCount)
            .Select(_ => random.NextDouble() < 0.2 ? (double?)null : 24 + 6 * random.NextDouble())
            .ToArray();
        values[0] ??= 25;
        values[^1] ??= 22;
        return (NestedSample.From(tree, values), Variances(random, tree.LeafRank));
    }

    /// <summary>A tree whose values follow the model with the given variances.</summary>
    public static NestedSample Simulated(
        Random random, NestedTree tree, RankVariances variances, double mean)
    {
        var places = new[] { mean };
        for (var rank = 0; rank <= tree.LeafRank; rank++)
        {
            var above = places;
            var deviation = Math.Sqrt(variances[rank]);
            places = [.. Enumerable.Range(0, tree.CountAt(rank))
                .Select(node => above[tree.ParentOf(rank, node)] + deviation * Deviate(random))];
        }

        return NestedSample.From(tree, [.. places.Select(y => (double?)y)]);
    }

    public static NestedTree Tree(Random random, int groupRanks, int leaves)
    {
        var parents = new List<int[]>();
        var above = 1;
        for (var rank = 0; rank <= groupRanks; rank++)
        {
            var count = rank == groupRanks
                ? leaves
                : 1 + random.Next(1 + leaves * (rank + 1) / (groupRanks + 1));
            var parentCount = above;
            parents.Add([.. Enumerable.Range(0, count).Select(_ => random.Next(parentCount))]);
            above = count;
        }

        return NestedTree.FromParents(parents);
    }

    private static RankVariances Variances(Random random, int groupRanks)
    {
        var variances = Enumerable.Range(0, groupRanks + 1)
            .Select(_ => random.NextDouble() < 0.2 ? 0 : Math.Exp(4 * random.NextDouble() - 2))
            .ToArray();
        variances[^1] = Math.Exp(4 * random.NextDouble() - 2);
        return RankVariances.From(variances);
    }

    // Box and Muller 1958, Ann. Math. Stat. 29:610-611.
    private static double Deviate(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble()))
        * Math.Cos(2 * Math.PI * random.NextDouble());
}
