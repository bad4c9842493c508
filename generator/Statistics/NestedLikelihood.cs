namespace CareSheets.Statistics;

/// <summary>
/// How well given variances explain a sample under y = mean + one normal effect per rank.
/// </summary>
/// <remarks>
/// Natural logarithms with every constant kept. With V the covariance of the n values, X their
/// column of ones and r the residuals about the generalised least-squares mean:
/// full = -1/2 [n ln 2π + ln|V| + r'V⁻¹r]; restricted = -1/2 [(n-1) ln 2π + ln|V| + ln|X'V⁻¹X| +
/// r'V⁻¹r] (Patterson and Thompson 1971, Biometrika 58:545-554). Some programs add ½ ln n to
/// the latter. Computed by pruning, linear in n.
/// </remarks>
public sealed class NestedLikelihood
{
    private readonly Evidence _root;

    private NestedLikelihood(UpwardPass pass)
    {
        _root = pass.Root;
        Restricted = pass.LogDensity;
    }

    public double Restricted { get; }

    /// <summary>The likelihood at the mean that makes it largest.</summary>
    public double Full => FullAt(Mean.Value);

    /// <summary>The generalised least-squares mean and its standard error.</summary>
    public NodeEstimate Mean => new(_root.Mean, _root.Variance);

    /// <summary>Exact and linear in the leaves. Needs one value.</summary>
    /// <exception cref="ArgumentException">
    /// The sample has no value, or the variances are not one per rank.
    /// </exception>
    public static NestedLikelihood Compute(NestedSample sample, RankVariances variances)
    {
        if (sample.Count == 0 || variances.Count != sample.Tree.LeafRank + 1)
        {
            throw new ArgumentException("A likelihood needs a value and a variance per rank.");
        }

        var pass = new UpwardPass(sample);
        pass.Run(variances);
        return new NestedLikelihood(pass);
    }

    /// <summary>The full likelihood at any overall mean, in the units of the response.</summary>
    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public double FullAt(double mean)
    {
        Require.Finite(mean);
        return Restricted + Evidence.Exactly(mean).LogMergingDensity(_root);
    }
}
