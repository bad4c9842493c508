namespace CareSheets.Statistics;

/// <summary>
/// From the leaves to the root: what the values under each node say about its place, and the
/// log density of all merges on the way.
/// </summary>
/// <remarks>
/// Pruning, Felsenstein 1973: linear in the leaves. The arrays are kept between runs, because a
/// search for variances runs the pass hundreds of times.
/// </remarks>
internal sealed class UpwardPass
{
    private readonly NestedTree _tree;
    private readonly Evidence[][] _below;
    private readonly Evidence[][] _sent;
    private readonly Evidence[] _root = new Evidence[1];

    public UpwardPass(NestedSample sample)
    {
        _tree = sample.Tree;
        _below = [.. Enumerable.Range(0, _tree.LeafRank + 1)
            .Select(rank => new Evidence[_tree.CountAt(rank)])];
        _sent = [.. _below.Select(nodes => new Evidence[nodes.Length])];
        for (var leaf = 0; leaf < _tree.LeafCount; leaf++)
        {
            _below[^1][leaf] = sample[leaf] is { } value ? Evidence.Exactly(value) : default;
        }
    }

    public Evidence Root => _root[0];

    /// <summary>Of the values' contrasts, the overall mean integrated out (REML).</summary>
    public double LogDensity { get; private set; }

    /// <summary>Per node of the rank: what its values say about its own place.</summary>
    public ReadOnlySpan<Evidence> BelowAt(int rank) => _below[rank];

    /// <summary>Per node of the rank: what its values say about the place of its parent.</summary>
    public ReadOnlySpan<Evidence> SentAt(int rank) => _sent[rank];

    public void Run(RankVariances variances)
    {
        LogDensity = 0;
        for (var rank = _tree.LeafRank; rank >= 0; rank--)
        {
            Send(_below[rank], _sent[rank], variances[rank]);
            Merge(_tree.ParentsAt(rank), _sent[rank], rank == 0 ? _root : _below[rank - 1]);
        }
    }

    private static void Send(Evidence[] below, Evidence[] sent, double variance)
    {
        for (var node = 0; node < below.Length; node++)
        {
            sent[node] = below[node].Blurred(variance);
        }
    }

    private void Merge(ReadOnlySpan<int> parents, Evidence[] sent, Evidence[] above)
    {
        Array.Clear(above);
        for (var node = 0; node < sent.Length; node++)
        {
            ref var place = ref above[parents[node]];
            LogDensity += place.LogMergingDensity(sent[node]);
            place = place.Combined(sent[node]);
        }
    }
}
