namespace CareSheets.Statistics;

/// <summary>Linear equations with a symmetric, positive definite matrix, as ridge regression has them.</summary>
public static class RidgeSystem
{
    /// <summary>
    /// The x with A x = b by Gaussian elimination, without row exchanges, which such a matrix does not need
    /// (Golub and Van Loan 1996, Matrix Computations, 3rd ed., section 4.2; from memory). Cubic in the size;
    /// the input is left as it was.
    /// </summary>
    /// <exception cref="ArgumentException">The matrix is not positive definite.</exception>
    public static double[] Solve(double[,] matrix, ReadOnlySpan<double> right)
    {
        var size = right.Length;
        var a = (double[,])matrix.Clone();
        var x = right.ToArray();
        for (var pivot = 0; pivot < size; pivot++)
        {
            if (!(a[pivot, pivot] > 0))
                throw new ArgumentException("The matrix is not positive definite.");
            for (var row = pivot + 1; row < size; row++)
                Eliminate(a, x, pivot, row);
        }
        for (var row = size - 1; row >= 0; row--)
        {
            for (var column = row + 1; column < size; column++)
                x[row] -= a[row, column] * x[column];
            x[row] /= a[row, row];
        }
        return x;
    }

    private static void Eliminate(double[,] a, double[] x, int pivot, int row)
    {
        var factor = a[row, pivot] / a[pivot, pivot];
        for (var column = pivot; column < x.Length; column++)
            a[row, column] -= factor * a[pivot, column];
        x[row] -= factor * x[pivot];
    }
}
