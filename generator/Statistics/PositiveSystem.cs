namespace CareSheets.Statistics;

/// <summary>
/// A small set of linear equations with a symmetric positive definite matrix.
/// </summary>
internal static class PositiveSystem
{
    /// <summary>
    /// Solves a x = b by Cholesky's factors; null when <paramref name="a"/> is not positive
    /// definite. Reads the lower triangle.
    /// </summary>
    public static double[]? Solve(double[,] a, double[] b)
    {
        if (Factor(a) is not { } lower)
        {
            return null;
        }

        var x = (double[])b.Clone();
        for (var row = 0; row < x.Length; row++)
        {
            x[row] = (x[row] - Dot(row, k => lower[row, k] * x[k])) / lower[row, row];
        }

        for (var row = x.Length - 1; row >= 0; row--)
        {
            for (var below = row + 1; below < x.Length; below++)
            {
                x[row] -= lower[below, row] * x[below];
            }

            x[row] /= lower[row, row];
        }

        return x;
    }

    private static double[,]? Factor(double[,] a)
    {
        var size = a.GetLength(0);
        var lower = new double[size, size];
        for (var column = 0; column < size; column++)
        {
            var square = a[column, column] - Dot(column, k => lower[column, k] * lower[column, k]);
            if (!(square > 0))
            {
                return null;
            }

            lower[column, column] = Math.Sqrt(square);
            for (var row = column + 1; row < size; row++)
            {
                var rest = a[row, column] - Dot(column, k => lower[row, k] * lower[column, k]);
                lower[row, column] = rest / lower[column, column];
            }
        }

        return lower;
    }

    private static double Dot(int count, Func<int, double> term)
    {
        var sum = 0.0;
        for (var k = 0; k < count; k++)
        {
            sum += term(k);
        }

        return sum;
    }
}
