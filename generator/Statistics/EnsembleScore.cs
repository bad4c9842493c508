namespace CareSheets.Statistics;

/// <summary>How good a forecast given as a handful of equally likely values proves.</summary>
public static class EnsembleScore
{
    /// <summary>
    /// Continuous ranked probability score of the members' empirical distribution:
    /// mean |x - y| - ½ mean |x - x'| over all pairs, a member with itself included. In the
    /// units of the value; small is good. Null for no member. Gneiting and Raftery 2007, JASA
    /// 102:359-378; the pairs are summed by rank.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public static double? Crps(SortedSample members, double value)
    {
        Require.Finite(value);
        if (members.Count == 0)
        {
            return null;
        }

        var n = (double)members.Count;
        var sum = 0.0;
        for (var k = 0; k < members.Count; k++)
        {
            var error = members[k] - value;
            sum += Math.Abs(error) - error * (2 * k + 1 - n) / n;
        }

        return sum / n;
    }
}
