using CareSheets.Statistics;
using MathNet.Numerics.LinearAlgebra;

namespace CareSheets.Tests.Statistics;

/// <summary>
/// The regression on a tree against dense matrices (MathNet.Numerics 5.0.0), in which the weights are
/// normal around 0: the covariance becomes V + X D X' with the mean alone as a fixed effect (Henderson
/// 1975; the equality of both forms is the matrix inversion lemma of Woodbury 1950). Relative 1e-7.
/// </summary>
public sealed class NestedRegressionTests
{
    private const double Ridge = 0.05;
    private const double Digits = 1e-7;

    public static TheoryData<int> Trees { get; } = [.. Enumerable.Range(0, 100)];

    [Theory]
    [MemberData(nameof(Trees))]
    public void Each_leaf_is_foretold_as_by_a_dense_refit_without_its_row(int number)
    {
        var (sample, variances) = RandomNesting.Number(number);
        var columns = Columns(sample, new Random(number), 1 + number % 3);
        var regression = NestedRegression.Compute(sample, columns, variances, Ridge);
        var dense = new Dense(sample, columns, variances);
        for (var leaf = 0; leaf < sample.Tree.LeafCount; leaf++)
        {
            var (mean, variance) = dense.Foretell(leaf);
            var found = regression.WithoutOwnValue(leaf, [.. columns.Select(c => c[leaf])])!;
            Assert.Equal(0, (found.Mean - mean) / Math.Max(1, Math.Abs(mean)), Digits);
            Assert.Equal(1, found.StandardDeviation / Math.Sqrt(variance), Digits);
        }
    }

    [Fact]
    public void A_response_that_is_twice_a_column_has_nearly_that_weight_and_hardly_a_remainder()
    {
        var (sample, variances) = RandomNesting.Number(7);
        var column = Columns(sample, new Random(7), 1)[0];
        var response = NestedSample.From(sample.Tree, [.. column.Select(x => (double?)(2 * x))]);
        var regression = NestedRegression.Compute(response, [column], variances, 1e-9);
        Assert.Equal(2, regression.Weights[0], 1e-6);
        Assert.All(regression.Remainders(), r => Assert.Equal(0, r!.Value, 1e-5));
    }

    [Fact]
    public void A_column_that_never_differs_gets_no_weight()
    {
        var (sample, variances) = RandomNesting.Number(3);
        var constant = Enumerable.Repeat(4.0, sample.Tree.LeafCount).ToArray();
        var regression = NestedRegression.Compute(sample, [constant], variances, Ridge);
        var plain = NestedPredictions.Compute(sample, variances);
        Assert.Equal(0, regression.Weights[0], 1e-9);
        Assert.Equal(plain.WithoutOwnValue(0)!.Mean, regression.WithoutOwnValue(0, [4])!.Mean, 1e-9);
    }

    [Fact]
    public void A_column_of_the_wrong_length_is_refused()
    {
        var (sample, variances) = RandomNesting.Number(3);
        Assert.Throws<ArgumentException>(() => NestedRegression.Compute(sample, [[1, 2]], variances, Ridge));
    }

    private static List<double[]> Columns(NestedSample sample, Random random, int count) =>
        [.. Enumerable.Range(0, count).Select(_ =>
            Enumerable.Range(0, sample.Tree.LeafCount).Select(_ => 3 * random.NextDouble()).ToArray())];

    private sealed class Dense
    {
        private readonly NestedSample _sample;
        private readonly Matrix<double> _covariance;

        public Dense(NestedSample sample, List<double[]> columns, RankVariances variances)
        {
            _sample = sample;
            var tree = sample.Tree;
            var v = Matrix<double>.Build.Dense(tree.LeafCount, tree.LeafCount, (i, j) =>
                Enumerable.Range(0, tree.LeafRank + 1)
                    .Where(r => tree.AncestorOf(i, r) == tree.AncestorOf(j, r)).Sum(r => variances[r]));
            var x = Matrix<double>.Build.DenseOfColumnArrays(columns);
            var known = Known(-1);
            var (vk, xk) = (Part(v, known, known), Matrix<double>.Build.DenseOfRowVectors(known.Select(k => x.Row(k))));
            var one = Vector<double>.Build.Dense(known.Length, 1);
            var inverse = vk.Inverse();
            var p = inverse - (inverse * one).OuterProduct(inverse * one) / (one * (inverse * one));
            var doubts = xk.TransposeThisAndMultiply(p * xk).Diagonal().Select(d => 1 / (Ridge * d)).ToArray();
            _covariance = v + x * Matrix<double>.Build.DenseOfDiagonalArray(doubts) * x.Transpose();
        }

        public (double Mean, double Variance) Foretell(int leaf)
        {
            var rows = Known(leaf);
            var y = Vector<double>.Build.DenseOfEnumerable(rows.Select(r => _sample[r]!.Value));
            var one = Vector<double>.Build.Dense(rows.Length, 1);
            var factor = Part(_covariance, rows, rows).Cholesky();
            var c = Part(_covariance, rows, [leaf]).Column(0);
            var precision = one * factor.Solve(one);
            var mean = one * factor.Solve(y) / precision;
            var loose = 1 - one * factor.Solve(c);
            return (mean + c * factor.Solve(y - mean),
                _covariance[leaf, leaf] - c * factor.Solve(c) + loose * loose / precision);
        }

        private int[] Known(int without) => [.. Enumerable.Range(0, _sample.Tree.LeafCount)
            .Where(leaf => leaf != without && _sample[leaf] is not null)];

        private static Matrix<double> Part(Matrix<double> all, int[] rows, int[] columns) =>
            Matrix<double>.Build.Dense(rows.Length, columns.Length, (i, j) => all[rows[i], columns[j]]);
    }
}
