using MathNet.Numerics;

namespace CareSheets.Statistics;

/// <summary>
/// Whether intervals that claim to hold a share of what happens held about that share.
/// </summary>
/// <remarks>
/// Cases must be independent. Forecasts that leave out one value of a group share that group's
/// other values, so for them the real band is wider than this one.
/// </remarks>
public static class Coverage
{
    /// <summary>
    /// The counts of covered cases that agree with the claim: from the α/2 to the 1 - α/2
    /// quantile of the binomial distribution, both ends included, so at least
    /// <paramref name="confidence"/> = 1 - α in all. Needs one trial.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// No trial, or a coverage or confidence not between 0 and 1.
    /// </exception>
    public static (int Low, int High) AcceptanceBand(
        int trials, double coverage, double confidence = 0.95)
    {
        Binomial.RequireCount(0, trials);
        Require.Share(coverage);
        var tail = (1 - Require.Share(confidence)) / 2;
        return (Binomial.Quantile(tail, trials, coverage),
            Binomial.Quantile(1 - tail, trials, coverage));
    }

    /// <summary>
    /// The likelihood ratio of the observed share against the claimed one, about chi-square with
    /// 1 degree of freedom, and its p. 0 and 1 when they are equal. Needs one trial; rough below
    /// a hundred. Kupiec 1995, J. Derivatives 3(2):73-84.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// No trial, a count outside them, or a coverage not between 0 and 1.
    /// </exception>
    public static (double LikelihoodRatio, double P) Kupiec(
        int covered, int trials, double coverage)
    {
        Binomial.RequireCount(covered, trials);
        Require.Share(coverage);
        var ratio = Math.Max(0, 2 * (Term(covered, trials * coverage)
            + Term(trials - covered, trials * (1 - coverage))));
        return (ratio, SpecialFunctions.Erfc(Math.Sqrt(ratio / 2)));
    }

    private static double Term(int count, double expected) =>
        count == 0 ? 0 : count * Math.Log(count / expected);
}
