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
        var (before, after, squares, total) = (0.0, 0.0, 0.0, 0.0);
        foreach (var left in entries)
        {
            var weights = Weigh(figure, entries.Where(e => e != left));
            var actual = _deviates[figure, left]!.Value;
            var error = actual - Predict(weights, figure, left);
            (before, after) = (before + Math.Abs(actual), after + Math.Abs(error));
            (squares, total) = (squares + error * error, total + actual * actual);
        }
        Savings[figure] = 1 - after / before;
        if (Savings[figure] < WorthIt)
            return;
        _weights[figure] = Weigh(figure, entries);
        _share[figure] = Math.Min(1, squares / total);
    }

    private double Predict(double[] weights, int figure, int entry)
    {
        var sum = 0.0;
        for (var other = 0; other < weights.Length; other++)
            sum += other == figure ? 0 : weights[other] * Known(other, entry);
        return sum;
    }

    /// <summary>Ridge regression: (X'X + k I) w = X'y, with k a tenth of the entries' number.</summary>
    private double[] Weigh(int figure, IEnumerable<int> entries)
    {
        var size = _deviates.GetLength(0);
        var squares = new double[size, size];
        var right = new double[size];
        var count = 0;
        foreach (var entry in entries)
        {
            count++;
            for (var i = 0; i < size; i++)
            {
                right[i] += i == figure ? 0 : Known(i, entry) * Known(figure, entry);
                for (var j = 0; j < size; j++)
                    squares[i, j] += i == figure || j == figure ? 0 : Known(i, entry) * Known(j, entry);
            }
        }
        for (var i = 0; i < size; i++)
            squares[i, i] += 0.1 * count;
        return RidgeSystem.Solve(squares, right);
    }

    private double Known(int figure, int entry) => Math.Clamp(_deviates[figure, entry] ?? 0, -Limit, Limit);
}
