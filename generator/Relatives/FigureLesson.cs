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
    /// <param name="deviates">By figure and entry; nothing where unknown or set aside.</param>
    /// <param name="entries">Those to learn from, each with a deviate of the figure.</param>
    public static FigureLesson Learn(
        double?[,] deviates, int figure, IReadOnlySet<int> used, IReadOnlyList<int> entries)
    {
        var sums = DeviateSums.Of(deviates, figure, used, entries);
        var (before, after, squares, total) = (0.0, 0.0, 0.0, 0.0);
        foreach (var left in entries)
        {
            var actual = deviates[figure, left]!.Value;
            var error = actual - DeviateSums.Predict(sums.WeightsWithout(left), deviates, left);
            (before, after) = (before + Math.Abs(actual), after + Math.Abs(error));
            (squares, total) = (squares + error * error, total + actual * actual);
        }
        return new FigureLesson(
            sums.Weights(),
            total > 0 ? Math.Min(1, squares / total) : 1,
            before > 0 ? 1 - after / before : 0);
    }

    public double Predict(double?[,] deviates, int entry) => DeviateSums.Predict(Weights, deviates, entry);
}
