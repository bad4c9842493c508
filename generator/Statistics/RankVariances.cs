namespace CareSheets.Statistics;

/// <summary>
/// How much each rank scatters: one variance per rank from the uppermost groups to the leaves.
/// </summary>
/// <remarks>
/// In squared units of the response. A group rank may have variance 0; the leaves' own variance,
/// the residual, is above 0. Population variances, not sums of squares.
/// </remarks>
public sealed class RankVariances
{
    private readonly double[] _values;

    private RankVariances(double[] values) => _values = values;

    public int Count => _values.Length;

    public double Residual => _values[^1];

    /// <summary>The variance of one leaf about the overall mean.</summary>
    public double Total => Below(-1);

    public IReadOnlyList<double> Values => _values;

    public double this[int rank] => _values[rank];

    /// <exception cref="ArgumentOutOfRangeException">
    /// No variance, one that is negative, NaN or infinite, or a residual of 0.
    /// </exception>
    public static RankVariances From(params ReadOnlySpan<double> values)
    {
        if (values.IsEmpty || !(values[^1] > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(values), "The residual must be above 0.");
        }

        foreach (var value in values)
        {
            if (!(value >= 0 && double.IsFinite(value)))
            {
                throw new ArgumentOutOfRangeException(nameof(values), value, "Not a variance.");
            }
        }

        return new RankVariances(values.ToArray());
    }

    /// <summary>
    /// The summed variance of all ranks under a rank: how far a new leaf strays from the place
    /// of a group of that rank. Rank -1 is the root.
    /// </summary>
    public double Below(int rank)
    {
        var sum = 0.0;
        for (var below = _values.Length - 1; below > rank; below--)
        {
            sum += _values[below];
        }

        return sum;
    }
}
