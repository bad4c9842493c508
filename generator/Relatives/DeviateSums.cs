using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>
/// The sums of a ridge regression of one figure's deviates on those of others, from which an entry can
/// be taken out again: leaving each of n entries out in turn then costs n steps, not n times n.
/// </summary>
internal sealed class DeviateSums(double?[,] deviates, int figure, IReadOnlySet<int> used)
{
    /// <summary>One odd figure must not drag the others along: deviates count up to this.</summary>
    private const double Limit = 2.5;

    private readonly double[,] _squares = new double[deviates.GetLength(0), deviates.GetLength(0)];
    private readonly double[] _right = new double[deviates.GetLength(0)];
    private int _count;

    public static DeviateSums Of(
        double?[,] deviates, int figure, IReadOnlySet<int> used, IReadOnlyList<int> entries)
    {
        var sums = new DeviateSums(deviates, figure, used);
        foreach (var entry in entries)
            sums.Add(entry, 1);
        return sums;
    }

    /// <summary>The weights learnt from all entries but one.</summary>
    public double[] WeightsWithout(int entry)
    {
        Add(entry, -1);
        var weights = Weights();
        Add(entry, 1);
        return weights;
    }

    /// <summary>Ridge regression: (X'X + k I) w = X'y, with k a tenth of the entries' number.</summary>
    public double[] Weights()
    {
        var ridged = (double[,])_squares.Clone();
        for (var i = 0; i < _right.Length; i++)
            ridged[i, i] += 0.1 * Math.Max(_count, 1);
        return RidgeSystem.Solve(ridged, _right);
    }

    public static double Predict(double[] weights, double?[,] deviates, int entry)
    {
        var sum = 0.0;
        for (var other = 0; other < weights.Length; other++)
            sum += weights[other] == 0 ? 0 : weights[other] * Known(deviates, other, entry);
        return sum;
    }

    private void Add(int entry, int sign)
    {
        _count += sign;
        var own = sign * Known(deviates, figure, entry);
        foreach (var i in used)
        {
            var known = Known(deviates, i, entry);
            _right[i] += known * own;
            foreach (var j in used)
                _squares[i, j] += sign * known * Known(deviates, j, entry);
        }
    }

    private static double Known(double?[,] deviates, int figure, int entry) =>
        Math.Clamp(deviates[figure, entry] ?? 0, -Limit, Limit);
}
