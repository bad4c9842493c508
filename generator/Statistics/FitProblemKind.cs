namespace CareSheets.Statistics;

/// <summary>Why no variances could be fitted.</summary>
public enum FitProblemKind
{
    /// <summary>Fewer values than the fit needs.</summary>
    TooFew,

    /// <summary>All values are alike and no prior says how much they ought to scatter.</summary>
    NoVariance,

    /// <summary>
    /// Values are alike within every smallest group, so without a prior the likelihood has no
    /// maximum: it rises without end as the residual shrinks.
    /// </summary>
    ResidualVanishes,

    /// <summary>No climb reached a summit: not known to happen; told rather than hidden.</summary>
    NotConverged,
}
