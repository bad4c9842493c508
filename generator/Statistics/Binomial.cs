using MathNet.Numerics;

namespace CareSheets.Statistics;

/// <summary>How many of n independent trials succeed when each does with one probability.</summary>
internal static class Binomial
{
    /// <summary>
    /// Of at most <paramref name="count"/> successes. Abramowitz and Stegun 1964, 26.5.24.
    /// </summary>
    public static double Cdf(int count, int trials, double probability)
    {
        if (count < 0)
        {
            return 0;
        }

        return count >= trials
            ? 1
            : SpecialFunctions.BetaRegularized(trials - count, count + 1, 1 - probability);
    }

    /// <summary>The smallest count whose cumulative probability reaches the given one.</summary>
    public static int Quantile(double cumulative, int trials, double probability)
    {
        var (low, high) = (-1, trials);
        while (high - low > 1)
        {
            var middle = low + (high - low) / 2;
            (low, high) = Cdf(middle, trials, probability) < cumulative
                ? (middle, high)
                : (low, middle);
        }

        return high;
    }

    public static void RequireCount(int count, int trials)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(trials);
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, trials);
    }
}
