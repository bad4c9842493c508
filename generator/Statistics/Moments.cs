namespace CareSheets.Statistics;

/// <summary>
/// Count, mean and sum of squared deviations of some numbers, addable without cancellation.
/// </summary>
/// <remarks>
/// Chan, Golub and LeVeque 1983, Am. Stat. 37:242-247. The default is of no numbers at all.
/// </remarks>
internal readonly record struct Moments(int Count, double Mean, double SumOfSquares)
{
    /// <summary>The sample variance, n - 1 in the denominator; needs two numbers.</summary>
    public double Variance => SumOfSquares / (Count - 1);

    public static Moments Of(ReadOnlySpan<double> values)
    {
        var moments = default(Moments);
        foreach (var value in values)
        {
            moments = moments.And(value);
        }

        return moments;
    }

    public Moments And(double value) => And(new Moments(1, value, 0));

    public Moments And(Moments other)
    {
        var count = Count + other.Count;
        if (count == 0)
        {
            return this;
        }

        var distance = other.Mean - Mean;
        var share = (double)other.Count / count;
        var between = distance * distance * Count * share;
        return new(count, Mean + distance * share, SumOfSquares + other.SumOfSquares + between);
    }
}
