namespace CareSheets.Statistics;

/// <summary>
/// p-values of many tests made comparable with one limit: reject where the adjusted p is at
/// most the limit.
/// </summary>
/// <remarks>
/// Results keep the order of the input; tied p-values get tied results; no test, no result. A
/// p outside 0-1 or NaN is refused.
/// </remarks>
public static class AdjustedP
{
    /// <summary>
    /// Keeps the expected share of false alarms among all alarms at the limit, for independent
    /// or positively dependent tests: min over j ≥ i of m p(j)/j. Benjamini and Hochberg 1995,
    /// JRSS B 57:289-300.
    /// </summary>
    public static double[] BenjaminiHochberg(ReadOnlySpan<double> p)
    {
        var tests = p.Length;
        return StepUp(p, rank => (double)tests / rank);
    }

    /// <summary>
    /// As <see cref="BenjaminiHochberg(ReadOnlySpan{double})"/>; a test without a p (null) stays
    /// without and does not count among the m.
    /// </summary>
    public static double?[] BenjaminiHochberg(IReadOnlyList<double?> p)
    {
        var known = new Queue<double>(BenjaminiHochberg([.. p.OfType<double>()]));
        return [.. p.Select(value => value is null ? (double?)null : known.Dequeue())];
    }

    /// <summary>
    /// The same for tests dependent in any way, at the price of the factor 1 + 1/2 + … + 1/m.
    /// Benjamini and Yekutieli 2001, Ann. Stat. 29:1165-1188.
    /// </summary>
    public static double[] BenjaminiYekutieli(ReadOnlySpan<double> p)
    {
        var harmonic = Enumerable.Range(1, p.Length).Sum(rank => 1.0 / rank) * p.Length;
        return StepUp(p, rank => harmonic / rank);
    }

    /// <summary>
    /// Keeps the chance of any false alarm at the limit, for independent tests: step-up over
    /// (m - i + 1) p(i). Hochberg 1988, Biometrika 75:800-802.
    /// </summary>
    public static double[] Hochberg(ReadOnlySpan<double> p)
    {
        var tests = p.Length;
        return StepUp(p, rank => tests - rank + 1);
    }

    /// <summary>
    /// Keeps the chance of any false alarm at the limit, for any tests: step-down over
    /// (m - i + 1) p(i). Holm 1979, Scand. J. Stat. 6:65-70.
    /// </summary>
    public static double[] Holm(ReadOnlySpan<double> p)
    {
        var adjusted = new double[p.Length];
        var largest = 0.0;
        foreach (var (position, index) in Order(p).Index())
        {
            largest = Math.Max(largest, Math.Min(1, (p.Length - position) * p[index]));
            adjusted[index] = largest;
        }

        return adjusted;
    }

    private static double[] StepUp(ReadOnlySpan<double> p, Func<int, double> factor)
    {
        var adjusted = new double[p.Length];
        var order = Order(p);
        var smallest = 1.0;
        for (var rank = p.Length; rank > 0; rank--)
        {
            var index = order[rank - 1];
            smallest = Math.Min(smallest, factor(rank) * p[index]);
            adjusted[index] = smallest;
        }

        return adjusted;
    }

    private static int[] Order(ReadOnlySpan<double> p)
    {
        foreach (var value in p)
        {
            Require.Probability(value);
        }

        var sorted = p.ToArray();
        var order = Enumerable.Range(0, p.Length).ToArray();
        Array.Sort(sorted, order);
        return order;
    }
}
