using CareSheets.Statistics;
using MathNet.Numerics.LinearAlgebra;

namespace CareSheets.Tests.Statistics;

/// <summary>
/// The same model by textbook matrices (MathNet.Numerics 5.0.0): V over the known leaves,
/// generalised least squares, and refits with rows taken out. Cubic, and sharing no code.
/// </summary>
internal sealed class DenseModel
{
    private readonly NestedTree _tree;
    private readonly RankVariances _variances;
    private readonly int[] _leaves;
    private readonly Vector<double> _y;
    private readonly Matrix<double> _v;
    private readonly Vector<double> _one;

    public DenseModel(NestedSample sample, RankVariances variances, Func<int, bool>? keep = null)
    {
        _tree = sample.Tree;
        _variances = variances;
        _leaves = [.. Enumerable.Range(0, _tree.LeafCount)
            .Where(leaf => sample[leaf].HasValue && (keep is null || keep(leaf)))];
        _y = Vector<double>.Build.Dense([.. _leaves.Select(leaf => sample[leaf]!.Value)]);
        _v = Matrix<double>.Build.Dense(
            _leaves.Length, _leaves.Length, (i, j) => Covariance(_leaves[i], _leaves[j]));
        _one = Vector<double>.Build.Dense(_leaves.Length, 1);
    }

    public bool IsEmpty => _leaves.Length == 0;

    public double MeanPrecision => _one * _v.Cholesky().Solve(_one);

    public double Mean => _one * _v.Cholesky().Solve(_y) / MeanPrecision;

    public double Full => -0.5 * (_y.Count * Math.Log(2 * Math.PI)
        + _v.Cholesky().DeterminantLn + Residuals * _v.Cholesky().Solve(Residuals));

    public double Restricted => Full + 0.5 * (Math.Log(2 * Math.PI) - Math.Log(MeanPrecision));

    private Vector<double> Residuals => _y - Mean;

    /// <summary>Best linear unbiased prediction of an effect, and its error variance.</summary>
    public (double Value, double Variance) Effect(int rank, int node)
    {
        var c = Covariances(leaf => _tree.AncestorOf(leaf, rank) == node ? _variances[rank] : 0);
        return Predict(c, _variances[rank], meanWeight: 0);
    }

    /// <summary>Of mean plus all effects down to a group: a sum, so its covariances add.</summary>
    public (double Value, double Variance) Place(int rank, int node)
    {
        var lineage = Lineage(rank, node);
        var c = Covariances(leaf => Enumerable.Range(0, rank + 1)
            .Where(r => _tree.AncestorOf(leaf, r) == lineage[r]).Sum(r => _variances[r]));
        return Predict(c, Enumerable.Range(0, rank + 1).Sum(r => _variances[r]), meanWeight: 1);
    }

    /// <summary>Of the value of a leaf that is not among the rows.</summary>
    public (double Value, double Variance) Leaf(int leaf) =>
        Predict(Covariances(other => Covariance(leaf, other)), _variances.Total, meanWeight: 1);

    private int[] Lineage(int rank, int node)
    {
        var lineage = new int[rank + 1];
        for (var r = rank; r >= 0; r--)
        {
            lineage[r] = node;
            node = _tree.ParentOf(r, node);
        }

        return lineage;
    }

    private (double Value, double Variance) Predict(
        Vector<double> c, double variance, double meanWeight)
    {
        var solved = _v.Cholesky().Solve(c);
        var loose = meanWeight - _one * solved;
        return (meanWeight * Mean + solved * Residuals,
            variance - c * solved + loose * loose / MeanPrecision);
    }

    private Vector<double> Covariances(Func<int, double> covariance) =>
        Vector<double>.Build.Dense([.. _leaves.Select(covariance)]);

    private double Covariance(int one, int other) => Enumerable.Range(0, _tree.LeafRank + 1)
        .Where(rank => _tree.AncestorOf(one, rank) == _tree.AncestorOf(other, rank))
        .Sum(rank => _variances[rank]);
}
