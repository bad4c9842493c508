namespace CareSheets.Statistics;

/// <summary>Numbers in rising order, each of them finite; ties stay.</summary>
public sealed class SortedSample
{
    // 1 / Φ⁻¹(3/4): half of a normal population lies within 0.67449 standard deviations of its
    // median, so this factor makes the MAD estimate its standard deviation.
    private const double NormalConsistency = 1.482602218505602;

    private readonly double[] _values;

    private SortedSample(double[] values) => _values = values;

    public int Count => _values.Length;

    /// <summary>
    /// The middle value, or the mean of the middle two. Null for an empty sample. Half the
    /// values may be wild before it is (breakdown point 50 %).
    /// </summary>
    public double? Median => Quantile(0.5);

    /// <summary>
    /// 1.4826 times the median distance from the median: a robust standard deviation for near
    /// normal numbers, 0 if over half are alike. Null for an empty sample. Breakdown point 50 %.
    /// Hampel 1974, JASA 69:383-393; Rousseeuw and Croux 1993, JASA 88:1273-1283.
    /// </summary>
    public double? MedianAbsoluteDeviation =>
        Median is { } median ? NormalConsistency * MedianDistance(median) : null;

    public double this[int index] => _values[index];

    /// <summary>Copies and sorts; the input is left as it was.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is NaN or infinite.</exception>
    public static SortedSample From(ReadOnlySpan<double> values)
    {
        var sorted = values.ToArray();
        foreach (var value in sorted)
        {
            Require.Finite(value);
        }

        Array.Sort(sorted);
        return new SortedSample(sorted);
    }

    /// <summary>
    /// The sample quantile at a probability from 0 to 1, by default median-unbiased. Between
    /// two values it is interpolated; beyond the plotting positions of the outermost values it
    /// is those values. Null for an empty sample. Hyndman and Fan 1996, Am. Stat. 50:361-365.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A probability beyond 0-1.</exception>
    public double? Quantile(double probability, QuantileDefinition? definition = null)
    {
        Require.Probability(probability);
        if (Count == 0)
        {
            return null;
        }

        var a = (definition ?? QuantileDefinition.MedianUnbiased).PlottingConstant;
        var position = Math.Clamp(a + probability * (Count + 1 - 2 * a), 1, Count);
        var low = (int)position;
        var high = Math.Min(low + 1, Count);
        return double.Lerp(_values[low - 1], _values[high - 1], position - low);
    }

    private double MedianDistance(double median) =>
        From(Array.ConvertAll(_values, value => Math.Abs(value - median))).Median ?? 0;
}
