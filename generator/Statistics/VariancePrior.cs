namespace CareSheets.Statistics;

/// <summary>
/// What is believed of the rank variances before any value: scaled inverse chi-square, alike
/// and independent for every rank.
/// </summary>
/// <remarks>
/// Its density over the logarithm of a variance s is proportional to
/// exp(-ν/2 (ln s + c/s)), with its mode at s = c. Read as data (Gelman, Carlin, Stern and Rubin
/// 1995, Bayesian Data Analysis, normal model of known mean; from memory): every rank has
/// already shown ν effects whose mean square is c. So a rank with m known effects of sum of
/// squares q settles at (q + νc)/(m + ν): never 0, never infinite, and by m = 20 hardly moved.
/// Fits maximise the posterior density over the logarithms of the variances.
/// </remarks>
public sealed record VariancePrior
{
    // Between these bounds no step of a search leaves the range of a double.
    internal const double SmallestVariance = 1e-200;
    private const double LargestVariance = 1e200;

    private VariancePrior(double worth, double? totalVariance)
    {
        Worth = worth;
        TotalVariance = totalVariance;
    }

    /// <summary>No prior: plain REML or ML, where a variance of 0 is a lawful answer.</summary>
    public static VariancePrior None { get; } = new(0, null);

    /// <summary>
    /// Worth one effect per rank (ν = 1), the size of an equal share of the values' sample
    /// variance: c = s² / number of ranks, leaves counted. It follows shifts and scales of the
    /// values.
    /// </summary>
    public static VariancePrior Weak { get; } = new(1, null);

    /// <summary>ν, the number of effects per rank that the prior is worth; 0 is no prior.</summary>
    public double Worth { get; }

    /// <summary>
    /// The expected variance of one leaf about the overall mean; null: the sample variance of
    /// the values (n - 1 in the denominator).
    /// </summary>
    public double? TotalVariance { get; }

    /// <summary>
    /// Where the scatter to expect is known from elsewhere. A single value, or values all alike,
    /// can then be fitted too.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A worth not above 0, or a variance beyond 1e-200 to 1e200.
    /// </exception>
    public static VariancePrior Around(double totalVariance, double worth = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(
            Require.Positive(totalVariance), SmallestVariance);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(totalVariance, LargestVariance);
        return new(Require.Positive(worth), totalVariance);
    }

    internal double LogDensity(double variance, double centre) =>
        Worth == 0 ? 0 : -0.5 * Worth * (Math.Log(variance) + centre / variance);

    /// <summary>The slope of the log density by the variance itself.</summary>
    internal double Slope(double variance, double centre) =>
        Worth == 0 ? 0 : -0.5 * Worth * (1 - centre / variance) / variance;
}
