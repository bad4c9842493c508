namespace CareSheets.Statistics;

/// <summary>
/// Intervals for the probability behind a count of successes in independent trials.
/// </summary>
public static class Proportion
{
    /// <summary>
    /// The probabilities that a score test would not reject: near the stated confidence on
    /// average, below it for some probabilities. Needs one trial. Wilson 1927, JASA 22:209-212.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// No trial, a count outside them, or a confidence not between 0 and 1.
    /// </exception>
    public static Interval Wilson(int successes, int trials, double confidence = 0.95)
    {
        Binomial.RequireCount(successes, trials);
        var z = Normal.From(0, 1).CentralInterval(confidence).High;
        var share = (double)successes / trials;
        var shrink = 1 + z * z / trials;
        var middle = (share + z * z / (2.0 * trials)) / shrink;
        var half = z / shrink * Math.Sqrt(
            share * (1 - share) / trials + z * z / (4.0 * trials * trials));

        // At no success, and at nothing but, the formula ends at 0 or 1 except for rounding.
        return Interval.Between(
            successes == 0 ? 0 : middle - half, successes == trials ? 1 : middle + half);
    }

    /// <summary>
    /// The probabilities under which neither tail is rarer than half of 1 - confidence: never
    /// below the stated confidence, and wider for it. Needs one trial. Clopper and Pearson 1934,
    /// Biometrika 26:404-413.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// No trial, a count outside them, or a confidence not between 0 and 1.
    /// </exception>
    public static Interval ClopperPearson(int successes, int trials, double confidence = 0.95)
    {
        Binomial.RequireCount(successes, trials);
        var tail = (1 - Require.Share(confidence)) / 2;
        var low = successes == 0
            ? 0
            : MonotoneRoot.Between(0, 1, p => 1 - tail - Binomial.Cdf(successes - 1, trials, p));
        var high = successes == trials
            ? 1
            : MonotoneRoot.Between(0, 1, p => tail - Binomial.Cdf(successes, trials, p));
        return Interval.Between(low, high);
    }
}
