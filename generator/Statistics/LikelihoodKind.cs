namespace CareSheets.Statistics;

/// <summary>What a search for variances makes as large as possible.</summary>
public enum LikelihoodKind
{
    /// <summary>Of the contrasts only (REML): minds that the mean was estimated too.</summary>
    Restricted,

    /// <summary>Of the values at the best mean (ML): variances too small by a little.</summary>
    Full,
}
