namespace CareSheets.Statistics;

/// <summary>
/// From the root to the leaves: what all values *outside* each node say about the place of the
/// node that holds it.
/// </summary>
/// <remarks>
/// A node's siblings are gathered once from the left and once from the right rather than by
/// subtracting the node's own share from the sum, which would cancel when one child dominates.
/// Linear in the leaves.
/// </remarks>
internal sealed class DownwardPass
{
    private readonly NestedTree _tree;
    private readonly Evidence[][] _around;
    private readonly Evidence[][] _running;

    public DownwardPass(NestedTree tree)
    {
        _tree = tree;
        _around = [.. Enumerable.Range(0, tree.LeafRank + 1)
            .Select(rank => new Evidence[tree.CountAt(rank)])];
        _running = [new Evidence[1], .. Enumerable.Range(0, tree.LeafRank)
            .Select(rank => new Evidence[tree.CountAt(rank)])];
    }

    /// <summary>Per node of the rank: evidence about its parent, the node's own left out.</summary>
    public ReadOnlySpan<Evidence> AroundAt(int rank) => _around[rank];

    /// <summary>
    /// <paramref name="mean"/> is what is known of the overall mean beforehand: nothing, or an
    /// exact value.
    /// </summary>
    public void Run(UpwardPass upward, RankVariances variances, Evidence mean)
    {
        _running[0][0] = mean;
        for (var rank = 0; rank <= _tree.LeafRank; rank++)
        {
            if (rank > 0)
            {
                StartFromOutside(rank, variances[rank - 1]);
            }

            GatherSiblings(rank, upward.SentAt(rank));
        }
    }

    private void StartFromOutside(int rank, double parentVariance)
    {
        for (var parent = 0; parent < _running[rank].Length; parent++)
        {
            _running[rank][parent] = _around[rank - 1][parent].Blurred(parentVariance);
        }
    }

    private void GatherSiblings(int rank, ReadOnlySpan<Evidence> sent)
    {
        var parents = _tree.ParentsAt(rank);
        var around = _around[rank];
        var running = _running[rank];
        for (var node = 0; node < around.Length; node++)
        {
            around[node] = running[parents[node]];
            running[parents[node]] = around[node].Combined(sent[node]);
        }

        Array.Clear(running);
        for (var node = around.Length - 1; node >= 0; node--)
        {
            ref var right = ref running[parents[node]];
            around[node] = around[node].Combined(right);
            right = right.Combined(sent[node]);
        }
    }
}
