namespace CareSheets.Statistics;

/// <summary>
/// What a search climbs: the log likelihood of rank variances plus the log prior, with exact
/// slopes.
/// </summary>
internal sealed class VarianceObjective
{
    private readonly UpwardPass _upward;
    private readonly DownwardPass _downward;
    private readonly VariancePrior _prior;
    private readonly LikelihoodKind _kind;
    private readonly double _centre;

    public VarianceObjective(
        NestedSample sample, VariancePrior prior, LikelihoodKind kind, double totalVariance)
    {
        _upward = new UpwardPass(sample);
        _downward = new DownwardPass(sample.Tree);
        _prior = prior;
        _kind = kind;
        TotalVariance = totalVariance;
        Weight = sample.Count + prior.Worth;
        _centre = totalVariance / (sample.Tree.LeafRank + 1);
    }

    /// <summary>How many values there are, and how many more the prior is worth.</summary>
    public double Weight { get; }

    /// <summary>The order of size at which variances are expected.</summary>
    public double TotalVariance { get; }

    /// <summary>With a prior no variance may reach 0; without one, group ranks may.</summary>
    public bool AllowsZero => _prior.Worth == 0;

    public VariancePoint At(double[] variances)
    {
        var checkedVariances = RankVariances.From(variances);
        _upward.Run(checkedVariances);
        var full = _kind == LikelihoodKind.Full;
        _downward.Run(
            _upward, checkedVariances, full ? Evidence.Exactly(_upward.Root.Mean) : default);
        var slopes = new double[variances.Length];
        for (var rank = 0; rank < slopes.Length; rank++)
        {
            slopes[rank] = LikelihoodSlope(rank, variances[rank])
                + _prior.Slope(variances[rank], _centre);
        }

        return new VariancePoint(variances, Value(variances, full), slopes);
    }

    private double Value(double[] variances, bool full)
    {
        var constant = full ? -0.5 * Math.Log(2 * Math.PI * _upward.Root.Variance) : 0;
        return _upward.LogDensity + constant
            + variances.Sum(variance => _prior.LogDensity(variance, _centre));
    }

    /// <remarks>
    /// For a node whose own values and all others differ by δ in its place, known with doubt ν
    /// without its effect: dL/ds = ½ Σ [δ²/(s+ν)² - 1/(s+ν)], each node's share of the trace
    /// formula of Patterson and Thompson 1971. Finite at s = 0, so the boundary can be judged.
    /// The full likelihood has the same slope with the mean held at its best value.
    /// </remarks>
    private double LikelihoodSlope(int rank, double variance)
    {
        var around = _downward.AroundAt(rank);
        var below = _upward.BelowAt(rank);
        var sum = 0.0;
        for (var node = 0; node < below.Length; node++)
        {
            var weight = 1 / (variance + around[node].Variance + below[node].Variance);
            var distance = below[node].Mean - around[node].Mean;
            sum += distance * distance * weight * weight - weight;
        }

        return 0.5 * sum;
    }
}
