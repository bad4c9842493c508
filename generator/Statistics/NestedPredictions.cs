namespace CareSheets.Statistics;

/// <summary>
/// What the values of a sample say, at given variances, about every node of its tree and about
/// leaves not yet seen.
/// </summary>
/// <remarks>
/// Exact normal theory with the variances taken as known, linear in the leaves (Henderson 1975,
/// Biometrics 31:423-447, for the predictions; Felsenstein 1973 for the pruning). Standard
/// deviations include the uncertainty of the overall mean unless the mean was given. Null means
/// that no value is left to predict from.
/// </remarks>
public sealed class NestedPredictions
{
    private readonly NestedTree _tree;
    private readonly RankVariances _variances;
    private readonly UpwardPass _upward;
    private readonly DownwardPass _downward;
    private readonly Evidence _mean;

    private NestedPredictions(NestedSample sample, RankVariances variances, Evidence mean)
    {
        if (variances.Count != sample.Tree.LeafRank + 1)
        {
            throw new ArgumentException("Every rank needs its variance.");
        }

        _tree = sample.Tree;
        _variances = variances;
        _upward = new UpwardPass(sample);
        _upward.Run(variances);
        _downward = new DownwardPass(_tree);
        _downward.Run(_upward, variances, mean);
        _mean = mean.Combined(_upward.Root);
    }

    /// <summary>The overall mean: the place of the root.</summary>
    public NodeEstimate? Mean => Estimate(_mean);

    /// <exception cref="ArgumentException">The variances are not one per rank.</exception>
    public static NestedPredictions Compute(NestedSample sample, RankVariances variances) =>
        new(sample, variances, default);

    /// <summary>
    /// Takes the overall mean as known, so that standard errors are conditional on it, as some
    /// published tables are. For comparison with those; it understates what is unknown.
    /// </summary>
    /// <exception cref="ArgumentException">The variances are not one per rank.</exception>
    public static NestedPredictions ComputeGivenMean(
        NestedSample sample, RankVariances variances, double mean) =>
        new(sample, variances, Evidence.Exactly(Require.Finite(mean)));

    /// <summary>How far a node, group or leaf, lies from its parent.</summary>
    public NodeEstimate Effect(int rank, int node)
    {
        var around = _downward.AroundAt(rank)[node];
        var below = _upward.BelowAt(rank)[node];
        var variance = _variances[rank];
        var doubt = around.Variance + below.Variance;
        return double.IsInfinity(doubt)
            ? new NodeEstimate(0, variance)
            : new NodeEstimate(
                (below.Mean - around.Mean) * (variance / (variance + doubt)),
                variance * (doubt / (variance + doubt)));
    }

    /// <summary>The overall mean plus all effects down to a node, all values used.</summary>
    public NodeEstimate? Place(int rank, int node) =>
        Estimate(Outside(rank, node).Combined(_upward.BelowAt(rank)[node]));

    /// <summary>
    /// The value of a leaf as all others foretell it, whether it has a value of its own or not.
    /// Equal to a generalised least-squares fit without it (Dubrule 1983, Math. Geol.
    /// 15:687-699, gives the same by matrices).
    /// </summary>
    public Normal? WithoutOwnValue(int leaf) => WithoutGroup(leaf, _tree.LeafRank);

    /// <summary>
    /// The value of a leaf as foretold without any value in its group of the given rank: what
    /// would be said of the first of an unknown group.
    /// </summary>
    public Normal? WithoutGroup(int leaf, int rank) =>
        Forecast(Outside(rank, _tree.AncestorOf(leaf, rank)), rank);

    /// <summary>The next leaf of a group; every rank between is new.</summary>
    public Normal? NewLeafUnder(int rank, int node)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(rank, _tree.LeafRank);
        return Forecast(Outside(rank, node).Combined(_upward.BelowAt(rank)[node]), rank);
    }

    /// <summary>A leaf new at every rank.</summary>
    public Normal? NewLeaf() => Forecast(_mean, -1);

    private Evidence Outside(int rank, int node) =>
        _downward.AroundAt(rank)[node].Blurred(_variances[rank]);

    private Normal? Forecast(Evidence place, int rank) =>
        place.SaysNothing
            ? null
            : Normal.FromVariance(place.Mean, place.Variance + _variances.Below(rank));

    private static NodeEstimate? Estimate(Evidence place) =>
        place.SaysNothing ? null : new NodeEstimate(place.Mean, place.Variance);
}
