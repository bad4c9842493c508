namespace CareSheets.Statistics;

/// <summary>
/// What a set of values says about the place of a node: a normal density by mean and precision.
/// </summary>
/// <remarks>
/// Precision 0, the default, says nothing; infinite precision is an exact value. Both ends are
/// ordinary members here, which is why precision and not variance is stored.
/// </remarks>
internal readonly record struct Evidence(double Mean, double Precision)
{
    public double Variance => 1 / Precision;

    public bool SaysNothing => Precision == 0;

    public static Evidence Exactly(double value) => new(value, double.PositiveInfinity);

    /// <summary>The same evidence about a place that lies a random effect away.</summary>
    public Evidence Blurred(double variance) => new(Mean, 1 / (Variance + variance));

    /// <summary>
    /// Two independent pieces of evidence on one place, weighted by precision. At most one of
    /// them may be exact.
    /// </summary>
    public Evidence Combined(Evidence other)
    {
        if (SaysNothing || double.IsInfinity(other.Precision))
        {
            return other;
        }

        var precision = Precision + other.Precision;
        return new(Mean + (other.Mean - Mean) * (other.Precision / precision), precision);
    }

    /// <summary>
    /// The log density of the difference between two pieces of evidence: the one-dimensional
    /// contrast of Felsenstein 1973 (Am. J. Hum. Genet. 25:471-492). 0 if either says nothing.
    /// </summary>
    public double LogMergingDensity(Evidence other)
    {
        if (SaysNothing || other.SaysNothing)
        {
            return 0;
        }

        var variance = Variance + other.Variance;
        var distance = Mean - other.Mean;
        return -0.5 * (Math.Log(2 * Math.PI * variance) + distance * distance / variance);
    }
}
