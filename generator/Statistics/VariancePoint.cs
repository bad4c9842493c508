namespace CareSheets.Statistics;

/// <summary>
/// A place in the search for variances: how good it is, and how much better a little more of
/// each variance would make it.
/// </summary>
internal sealed record VariancePoint(double[] Variances, double Value, double[] Slopes)
{
    /// <summary>The slope by the logarithm of one rank's variance.</summary>
    public double LogSlope(int rank) => Variances[rank] * Slopes[rank];

    public double[] With(int rank, double variance)
    {
        var changed = (double[])Variances.Clone();
        changed[rank] = variance;
        return changed;
    }
}
