using MathNet.Numerics.LinearAlgebra;

namespace CareSheets.Statistics;

/// <summary>
/// A response on the leaves of a tree, foretold from its relatives and from other numbers known of
/// each leaf: nested effects plus a weighted sum of the others, with a small ridge on the weights.
/// </summary>
/// <remarks>
/// Generalised least squares at given variances (Henderson 1975, Biometrics 31:423-447), in time linear in
/// the leaves: with P the matrix that takes out the mean, P y is each leaf's error when foretold without
/// itself, over that forecast's variance (Dubrule 1983, Math. Geol. 15:687-699), and P of each column
/// likewise; so no matrix larger than the number of columns is ever inverted. The ridge stands for normal
/// weights around 0 (Hoerl and Kennard 1970, Technometrics 12:55-67).
/// </remarks>
public sealed class NestedRegression
{
    private readonly NestedSample _sample;
    private readonly IReadOnlyList<double[]> _columns;
    private readonly NestedPredictions _plain;
    private readonly NestedPredictions[] _ofColumns;
    private readonly Matrix<double> _doubt;
    private readonly Vector<double> _right;
    private readonly Vector<double> _weights;

    private NestedRegression(
        NestedSample sample, IReadOnlyList<double[]> columns, RankVariances variances, double ridge)
    {
        (_sample, _columns) = (sample, columns);
        _plain = NestedPredictions.Compute(sample, variances);
        _ofColumns = [.. columns.Select(column => NestedPredictions.Compute(LikeSample(column), variances))];
        var squares = Matrix<double>.Build.Dense(columns.Count, columns.Count);
        _right = Vector<double>.Build.Dense(columns.Count);
        foreach (var leaf in Known().Where(leaf => _plain.WithoutOwnValue(leaf) is not null))
        {
            var row = Row(leaf);
            _right.Add(row * Share(_plain, leaf, sample[leaf]!.Value), _right);
            squares.Add(row.OuterProduct(Shares(leaf)), squares);
        }
        _doubt = Ridged(squares, ridge).Cholesky().Solve(Matrix<double>.Build.DenseIdentity(columns.Count));
        _weights = _doubt * _right;
    }

    /// <summary>By column, what one unit of it adds to the response.</summary>
    public IReadOnlyList<double> Weights => _weights.AsArray();

    /// <param name="columns">Numbers known of every leaf, also of those without a response; all finite.</param>
    /// <param name="ridge">Part of a column's own weight of evidence that speaks for a weight of 0; above 0.</param>
    /// <exception cref="ArgumentException">The variances are not one per rank, or a column is too short.</exception>
    public static NestedRegression Compute(
        NestedSample sample, IReadOnlyList<double[]> columns, RankVariances variances, double ridge) =>
        columns.All(c => c.Length == sample.Tree.LeafCount)
            ? new(sample, columns, variances, Require.Positive(ridge))
            : throw new ArgumentException("Every leaf needs its number in every column.");

    /// <summary>What is left of each response, the weighted columns taken off; nothing where unknown.</summary>
    public IReadOnlyList<double?> Remainders() =>
        [.. _columns[0].Select((_, leaf) => _sample[leaf] is { } y ? y - Row(leaf) * _weights : (double?)null)];

    /// <summary>
    /// The response of a leaf as all others foretell it beside these numbers of its own, weights learnt without
    /// it; nothing when no other leaf has a response.
    /// </summary>
    /// <param name="numbers">By column; those of the leaf itself, or others it might have.</param>
    public Normal? WithoutOwnValue(int leaf, IReadOnlyList<double> numbers)
    {
        if (_plain.WithoutOwnValue(leaf) is not { } plain)
            return null;
        var (weights, doubt) = _sample[leaf] is { } own ? WeightsWithout(leaf, plain, own) : (_weights, _doubt);
        var apart = Vector<double>.Build.DenseOfEnumerable(numbers) - Foretold(leaf);
        var variance = plain.StandardDeviation * plain.StandardDeviation;
        return Normal.FromVariance(plain.Mean + apart * weights, variance + apart * (doubt * apart));
    }

    /// <summary>
    /// Taking a leaf out takes d d' / s2 from X'PX and d r / s2 from X'Py, with d and r the errors of its columns and
    /// of its response when foretold from the others, and s2 that forecast's variance; the inverse by the
    /// formula of Sherman and Morrison (1950, Ann. Math. Stat. 21:124-127).
    /// </summary>
    private (Vector<double> Weights, Matrix<double> Doubt) WeightsWithout(int leaf, Normal plain, double own)
    {
        var variance = plain.StandardDeviation * plain.StandardDeviation;
        var d = Row(leaf) - Foretold(leaf);
        var cd = _doubt * d;
        var doubt = _doubt + cd.OuterProduct(cd) / (variance - d * cd);
        return (doubt * (_right - d * ((own - plain.Mean) / variance)), doubt);
    }

    private Vector<double> Foretold(int leaf) =>
        Vector<double>.Build.Dense(_ofColumns.Length, k => _ofColumns[k].WithoutOwnValue(leaf)!.Mean);

    private IEnumerable<int> Known() =>
        Enumerable.Range(0, _sample.Tree.LeafCount).Where(leaf => _sample[leaf] is not null);

    private Vector<double> Row(int leaf) => Vector<double>.Build.Dense(_columns.Count, k => _columns[k][leaf]);

    private Vector<double> Shares(int leaf) =>
        Vector<double>.Build.Dense(_columns.Count, k => Share(_ofColumns[k], leaf, _columns[k][leaf]));

    /// <summary>A leaf's part of P y: its error over the variance of its forecast.</summary>
    private static double Share(NestedPredictions predictions, int leaf, double value)
    {
        var foretold = predictions.WithoutOwnValue(leaf)!;
        return foretold.Z(value) / foretold.StandardDeviation;
    }

    /// <summary>A column's numbers where the response is known.</summary>
    private NestedSample LikeSample(double[] column) => NestedSample.From(
        _sample.Tree, [.. column.Select((x, leaf) => _sample[leaf] is null ? null : (double?)x)]);

    /// <summary>A column that never differs says nothing; a 1 keeps the system solvable, its weight 0.</summary>
    private static Matrix<double> Ridged(Matrix<double> squares, double ridge)
    {
        var ridged = squares.Clone();
        for (var k = 0; k < squares.RowCount; k++)
            ridged[k, k] += Math.Max(ridge * squares[k, k], squares[k, k] > 1e-9 ? 0 : 1);
        return ridged;
    }
}
