namespace CareSheets.Statistics;

/// <summary>
/// The place where a rising function crosses zero, halved down to the last bit.
/// </summary>
/// <remarks>
/// Slower than Newton's way and incapable of leaving the bracket: quantiles are asked for by
/// the dozen, not the million.
/// </remarks>
internal static class MonotoneRoot
{
    // A double has 2098 powers of two; sixty-four halvings inside one of them use up its bits.
    private const int MostSteps = 2200;

    /// <summary>Looks upwards from <paramref name="low"/> in doubling steps, then halves.</summary>
    public static double Above(double low, Func<double, double> rising)
    {
        var step = 1.0;
        while (rising(low + step) < 0 && step < double.MaxValue / 4)
        {
            step *= 2;
        }

        return Between(low, low + step, rising);
    }

    public static double Between(double low, double high, Func<double, double> rising)
    {
        for (var step = 0; step < MostSteps; step++)
        {
            var middle = low + (high - low) / 2;
            if (middle <= low || middle >= high)
            {
                break;
            }

            (low, high) = rising(middle) < 0 ? (middle, high) : (low, middle);
        }

        return high;
    }
}
