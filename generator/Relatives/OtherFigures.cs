using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>
/// What an entry's other figures say about one of them: a fish that is softer-watered than its
/// relatives is likely to be kept more acid too, a larger one in a larger tank. The deviates of one
/// figure from what relatives foretell are regressed on those of the others, with a small ridge. It is
/// used for a figure only where, on this very collection, it lowers the leave-one-out error by a tenth.
/// </summary>
internal sealed class OtherFigures
{
    /// <summary>Fewest entries with a value from which weights are learnt.</summary>
    private const int FewestEntries = 30;

    /// <summary>The part of the error that must be saved.</summary>
    private const double WorthIt = 0.10;

    /// <summary>One odd figure must not drag the others along: deviates count up to this.</summary>
    private const double Limit = 2.5;

    private readonly double?[,] _deviates;
    private readonly double[]?[] _weights;
    private readonly double[] _share;

    /// <param name="deviates">By figure and entry; nothing where unknown or set aside.</param>
    public OtherFigures(double?[,] deviates)
    {
        _deviates = deviates;
        var figures = deviates.GetLength(0);
        _weights = new double[]?[figures];
        _share = [.. Enumerable.Repeat(1.0, figures)];
        Savings = new double[figures];
        for (var figure = 0; figure < figures; figure++)
            Learn(figure);
    }

    /// <summary>By figure, the share of the leave-one-out error that the others save; below 0 if they harm.</summary>
    public double[] Savings { get; }

    /// <summary>A forecast of one figure, moved by what the entry's other figures say.</summary>
    public Normal Adjust(int figure, int entry, Normal foretold)
    {
        if (_weights[figure] is not { } weights)
            return foretold;
        var shift = Predict(weights, figure, entry);
        return Normal.From(
            foretold.Mean + shift * foretold.StandardDeviation, foretold.StandardDeviation * Math.Sqrt(_share[figure]));
    }

    private void Learn(int figure)
    {
        var entries = Enumerable.Range(0, _deviates.GetLength(1)).Where(e => _deviates[figure, e] is not null).ToList();
        if (entries.Count < FewestEntries || _deviates.GetLength(0) < 2)
            return;
        var sums = new Sums(_deviates.GetLength(0));
        foreach (var entry in entries)
            Add(sums, figure, entry, 1);
        var (before, after, squares, total) = (0.0, 0.0, 0.0, 0.0);
        foreach (var left in entries)
        {
            Add(sums, figure, left, -1);
            var actual = _deviates[figure, left]!.Value;
            var error = actual - Predict(sums.Weights(), figure, left);
            Add(sums, figure, left, 1);
            (before, after) = (before + Math.Abs(actual), after + Math.Abs(error));
            (squares, total) = (squares + error * error, total + actual * actual);
        }
        Savings[figure] = 1 - after / before;
        if (Savings[figure] < WorthIt)
            return;
        _weights[figure] = sums.Weights();
        _share[figure] = Math.Min(1, squares / total);
    }

    private double Predict(double[] weights, int figure, int entry)
    {
        var sum = 0.0;
        for (var other = 0; other < weights.Length; other++)
            sum += other == figure ? 0 : weights[other] * Known(other, entry);
        return sum;
    }

    private void Add(Sums sums, int figure, int entry, int sign)
    {
        var size = _deviates.GetLength(0);
        sums.Count += sign;
        for (var i = 0; i < size; i++)
        {
            if (i == figure)
                continue;
            sums.Right[i] += sign * Known(i, entry) * Known(figure, entry);
            for (var j = 0; j < size; j++)
                sums.Squares[i, j] += j == figure ? 0 : sign * Known(i, entry) * Known(j, entry);
        }
    }

    private double Known(int figure, int entry) => Math.Clamp(_deviates[figure, entry] ?? 0, -Limit, Limit);

    /// <summary>X'X and X'y of the entries taken in.</summary>
    private sealed class Sums(int size)
    {
        public double[,] Squares { get; } = new double[size, size];

        public double[] Right { get; } = new double[size];

        public int Count { get; set; }

        /// <summary>Ridge regression: (X'X + k I) w = X'y, with k a tenth of the entries' number.</summary>
        public double[] Weights()
        {
            var ridged = (double[,])Squares.Clone();
            for (var i = 0; i < size; i++)
                ridged[i, i] += 0.1 * Count;
            return RidgeSystem.Solve(ridged, Right);
        }
    }
}
