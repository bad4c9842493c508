using MathNet.Numerics;

namespace CareSheets.Statistics;

/// <summary>
/// Kolmogorov's test of whether probability integral transforms spread evenly over 0 to 1, as
/// they do when forecasts say neither too much nor too little.
/// </summary>
public static class Uniformity
{
    /// <summary>
    /// The largest gap D between the sample's share of values up to x and x itself. Null for an
    /// empty sample. Kolmogorov 1933, G. Ist. Ital. Attuari 4:83-91.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A value beyond 0-1.</exception>
    public static double? Distance(SortedSample sample)
    {
        double? largest = null;
        for (var k = 0; k < sample.Count; k++)
        {
            var value = Require.Probability(sample[k]);
            var gap = Math.Max(
                (k + 1.0) / sample.Count - value, value - (double)k / sample.Count);
            largest = Math.Max(largest ?? 0, gap);
        }

        return largest;
    }

    /// <summary>
    /// The exact probability of a gap smaller than <paramref name="distance"/> among
    /// <paramref name="count"/> uniform values. Time grows as count³ × distance². Durbin 1973,
    /// Distribution Theory for Tests Based on the Sample Distribution Function, in the matrix
    /// form of Marsaglia, Tsang and Wang 2003, J. Stat. Softw. 8(18).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// No value, or a distance that is negative or not finite.
    /// </exception>
    public static double ProbabilityBelow(double distance, int count)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(count);
        ArgumentOutOfRangeException.ThrowIfNegative(Require.Finite(distance));
        if (2 * distance * count <= 1 || distance >= 1)
        {
            return distance >= 1 ? 1 : 0;
        }

        var middle = (int)(count * distance);
        var matrix = Durbin(2 * middle + 1, middle + 1 - count * distance);
        var row = new double[2 * middle + 1];
        row[middle] = 1;

        // The factor n!/nⁿ is spread over the steps, lest the row overflow on its way.
        var factor = Math.Exp(SpecialFunctions.FactorialLn(count) / count - Math.Log(count));
        for (var step = 0; step < count; step++)
        {
            row = Times(row, matrix, factor);
        }

        return Math.Clamp(row[middle], 0, 1);
    }

    /// <summary>
    /// The gap that the share <paramref name="confidence"/> of uniform samples stay below.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// No value, or a confidence not between 0 and 1.
    /// </exception>
    public static double CriticalDistance(int count, double confidence = 0.95)
    {
        Require.Share(confidence);
        return MonotoneRoot.Between(0, 1, d => ProbabilityBelow(d, count) - confidence);
    }

    private static double[,] Durbin(int size, double rest)
    {
        var matrix = new double[size, size];
        for (var row = 0; row < size; row++)
        {
            for (var column = 0; column <= Math.Min(row + 1, size - 1); column++)
            {
                matrix[row, column] = 1 / SpecialFunctions.Factorial(row - column + 1);
            }

            matrix[row, 0] -= Power(rest, row + 1);
        }

        for (var column = 0; column < size; column++)
        {
            matrix[size - 1, column] -= Power(rest, size - column);
        }

        matrix[size - 1, 0] += Power(Math.Max(0, 2 * rest - 1), size);
        return matrix;
    }

    private static double Power(double x, int n) =>
        Math.Exp(n * Math.Log(x) - SpecialFunctions.FactorialLn(n));

    private static double[] Times(double[] row, double[,] matrix, double factor)
    {
        var product = new double[row.Length];
        for (var k = 0; k < row.Length; k++)
        {
            for (var column = 0; column <= Math.Min(k + 1, row.Length - 1); column++)
            {
                product[column] += row[k] * matrix[k, column] * factor;
            }
        }

        return product;
    }
}
