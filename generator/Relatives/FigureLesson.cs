using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>
/// How the deviates of certain figures foretell that of another: a regression with a small ridge, and
/// what it saves when each entry in turn is left out.
/// </summary>
/// <param name="Weights">By figure; 0 for those not used.</param>
/// <param name="Share">Part of the variance that remains, at most 1.</param>
/// <param name="Saving">Part of the mean absolute error that it saves; below 0 if it harms.</param>
internal sealed record FigureLesson(double[] Weights, double Share, double Saving)
{
    /// <summary>One odd figure must not drag the others along: deviates count up to this.</summary>
    private const double Limit = 2.5;

    /// <param name="deviates">By figure and entry; nothing where unknown or set aside.</param>
    /// <param name="entries">Those to learn from, each with a deviate of the figure.</param>
    public static FigureLesson Learn(
        double?[,] deviates, int figure, IReadOnlySet<int> used, IReadOnlyList<int> entries)
    {
        var (before, after, squares, total) = (0.0, 0.0, 0.0, 0.0);
        foreach (var left in entries)
        {
            var actual = deviates[figure, left]!.Value;
            var error = actual - Predict(Weigh(deviates, figure, used, entries.Where(e => e != left)), deviates, left);
            (before, after) = (before + Math.Abs(actual), after + Math.Abs(error));
            (squares, total) = (squares + error * error, total + actual * actual);
        }
        return new FigureLesson(
            Weigh(deviates, figure, used, entries),
            total > 0 ? Math.Min(1, squares / total) : 1,
            before > 0 ? 1 - after / before : 0);
    }

    public double Predict(double?[,] deviates, int entry) => Predict(Weights, deviates, entry);

    /// <summary>Ridge regression: (X'X + k I) w = X'y, with k a tenth of the entries' number.</summary>
    private static double[] Weigh(
        double?[,] deviates, int figure, IReadOnlySet<int> used, IEnumerable<int> entries)
    {
        var size = deviates.GetLength(0);
        var squares = new double[size, size];
        var right = new double[size];
        var count = 0;
        foreach (var entry in entries)
        {
            count++;
            foreach (var i in used)
            {
                right[i] += Known(deviates, i, entry) * Known(deviates, figure, entry);
                foreach (var j in used)
                    squares[i, j] += Known(deviates, i, entry) * Known(deviates, j, entry);
            }
        }
        for (var i = 0; i < size; i++)
            squares[i, i] += 0.1 * Math.Max(count, 1);
        return RidgeSystem.Solve(squares, right);
    }

    private static double Predict(double[] weights, double?[,] deviates, int entry)
    {
        var sum = 0.0;
        for (var other = 0; other < weights.Length; other++)
            sum += weights[other] == 0 ? 0 : weights[other] * Known(deviates, other, entry);
        return sum;
    }

    private static double Known(double?[,] deviates, int figure, int entry) =>
        Math.Clamp(deviates[figure, entry] ?? 0, -Limit, Limit);
}
