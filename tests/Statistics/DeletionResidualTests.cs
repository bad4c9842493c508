using CareSheets.Statistics;
using MathNet.Numerics.LinearAlgebra;
using Xunit;

namespace CareSheets.Tests.Statistics;

public class DeletionResidualTests
{
    // Brownlee 1965; all 21 by R 4.2.2 rstudent, row 21 well known as -3.33.
    [Fact]
    public void Stackloss_agrees_with_the_table()
    {
        var rows = ReferenceFile.Rows("stackloss.csv")
            .Select(row => row.Select(ReferenceFile.Number).ToArray()).ToArray();

        var found = Residuals([.. rows.Select(row => row[..3])], [.. rows.Select(row => row[3])]);

        Assert.Equal(21, found.Length);
        Assert.Equal(rows.Select(row => row[4]), found, (a, b) => Math.Abs(a - b) < 1e-8);
    }

    // Ezekiel 1930, stopping distance by speed (data set cars of R); R 4.2.2 rstudent.
    [Theory]
    [InlineData(1, 0.26345000)]
    [InlineData(2, 0.81607841)]
    [InlineData(23, 3.02282876)]
    [InlineData(35, 2.09848208)]
    [InlineData(48, 1.09701943)]
    [InlineData(49, 3.18499284)]
    [InlineData(50, 0.28774529)]
    public void Stopping_distances_agree_with_the_table(int row, double expected)
    {
        var rows = ReferenceFile.Rows("cars.csv")
            .Select(cells => cells.Select(ReferenceFile.Number).ToArray()).ToArray();

        var found = Residuals([.. rows.Select(r => r[..1])], [.. rows.Select(r => r[1])]);

        Assert.Equal(expected, found[row - 1], 1e-8);
    }

    [Fact]
    public void Of_a_single_group_it_is_the_distance_from_the_others_forecast()
    {
        double[] values = [10, 12, 11, 13, 20];
        var mean = values.Average();
        var squares = values.Sum(y => (y - mean) * (y - mean));
        var others = SingleGroup.WithoutOwnValue(values);

        foreach (var (index, y) in values.Index())
        {
            var found = DeletionResidual.Compute(y - mean, 0.2, squares, 4)!.Value;
            Assert.Equal(others[index]!.T(y), found, 1e-12);
        }
    }

    [Fact]
    public void Where_nothing_is_left_to_judge_by_there_is_none()
    {
        Assert.Null(DeletionResidual.Compute(1, 0.5, 2, 1));
        Assert.Null(DeletionResidual.Compute(0, 1, 2, 5));
        Assert.Null(DeletionResidual.Compute(1, 0.5, 2, 5));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => DeletionResidual.Compute(1, 1.1, 2, 5));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => DeletionResidual.Compute(double.NaN, 0.1, 2, 5));
    }

    /// <summary>Ordinary least squares with an intercept, by MathNet.Numerics.</summary>
    private static double[] Residuals(double[][] predictors, double[] response)
    {
        var x = Matrix<double>.Build.DenseOfRowArrays(
            predictors.Select(row => (double[])[1, .. row]));
        var y = Vector<double>.Build.Dense(response);
        var hat = x * (x.TransposeThisAndMultiply(x)).Inverse() * x.Transpose();
        var residuals = y - hat * y;
        var squares = residuals * residuals;
        return [.. residuals.Select((residual, row) => DeletionResidual.Compute(
            residual, hat[row, row], squares, x.RowCount - x.ColumnCount)!.Value)];
    }
}
