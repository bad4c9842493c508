namespace CareSheets.Statistics;

/// <summary>
/// Estimates how much each rank of a classification scatters from one sample of values.
/// </summary>
public static class VarianceEstimation
{
    // Likelihoods of few values can have two summits. Of 24 000 fits to random nestings of 3 to
    // 42 leaves, one climb missed the higher summit 17 times, two climbs once, three never.
    private const int Climbs = 3;
    private const double LionsShare = 30;

    /// <summary>
    /// The variances that make the likelihood, times the prior, largest; the overall maximum
    /// among climbs from several starting points. Time per step is linear in the leaves.
    /// </summary>
    /// <remarks>
    /// Without a prior this is REML (Patterson and Thompson 1971, Biometrika 58:545-554) or ML,
    /// with variances of 0 where the likelihood is largest on that boundary, and needs two
    /// values; with <see cref="VariancePrior.Weak"/> too; with
    /// <see cref="VariancePrior.Around"/> one suffices. A rank the values cannot tell from its
    /// neighbour or from the mean gets 0 without a prior, and the prior's size with one. Same
    /// input, same bits.
    /// </remarks>
    public static FitOutcome Estimate(
        NestedSample sample,
        VariancePrior prior,
        LikelihoodKind kind = LikelihoodKind.Restricted)
    {
        var values = sample.Known();
        var shape = new SampleShape(sample);
        if (FindObstacle(values, shape, prior) is { } obstacle)
        {
            return FitOutcome.Of(obstacle);
        }

        var total = prior.TotalVariance ?? Moments.Of(values).Variance;
        var summit = Climb(new VarianceObjective(sample, prior, kind, total), shape);
        return summit is null
            ? FitOutcome.Of(Problem(FitProblemKind.NotConverged, prior, values))
            : FitOutcome.Of(FitAt(sample, RankVariances.From(summit.Variances)));
    }

    private static FitProblem? FindObstacle(
        double[] values, SampleShape shape, VariancePrior prior)
    {
        if (values.Length < Needed(prior))
        {
            return Problem(FitProblemKind.TooFew, prior, values);
        }

        if (prior.TotalVariance is null && (values.Max() == values.Min()
            || Moments.Of(values).Variance < VariancePrior.SmallestVariance))
        {
            return Problem(FitProblemKind.NoVariance, prior, values);
        }

        return prior.Worth == 0 && shape.SmallestGroupsAreFlat()
            ? Problem(FitProblemKind.ResidualVanishes, prior, values)
            : null;
    }

    private static FitProblem Problem(
        FitProblemKind kind, VariancePrior prior, double[] values) =>
        new(kind, Needed(prior), values.Length);

    private static int Needed(VariancePrior prior) => prior.TotalVariance is null ? 2 : 1;

    private static VariancePoint? Climb(VarianceObjective objective, SampleShape shape)
    {
        var silent = shape.SilentRanks();
        var search = new VarianceSearch(objective, silent);
        return Starts(silent, objective)
            .Select(objective.At)
            .OrderByDescending(point => point.Value)
            .Take(Climbs)
            .Select(search.Climb)
            .OfType<VariancePoint>()
            .MaxBy(point => point.Value);
    }

    /// <summary>Equal shares, and once for every rank the lion's share to that rank.</summary>
    private static IEnumerable<double[]> Starts(
        IReadOnlyList<bool> silent, VarianceObjective objective)
    {
        for (var favoured = -1; favoured < silent.Count; favoured++)
        {
            var weights = silent.Select((isSilent, rank) =>
                isSilent && objective.AllowsZero ? 0 : rank == favoured ? LionsShare : 1).ToArray();
            var sum = weights.Sum();
            yield return [.. weights.Select(weight => objective.TotalVariance * weight / sum)];
        }
    }

    private static Fit FitAt(NestedSample sample, RankVariances variances) => new(
        variances,
        NestedLikelihood.Compute(sample, variances),
        NestedPredictions.Compute(sample, variances));
}
