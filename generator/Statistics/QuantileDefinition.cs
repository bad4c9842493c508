namespace CareSheets.Statistics;

/// <summary>
/// Which probability the k-th smallest of n values stands for: (k - a)/(n + 1 - 2a), with a
/// between 0 and 1.
/// </summary>
/// <remarks>
/// Definitions 5 to 9 of Hyndman and Fan 1996, Am. Stat. 50:361-365, who recommend 8: the
/// default here, because ranges of care come from small samples, where it is the one whose
/// error is above as often as below whatever the distribution.
/// </remarks>
public sealed record QuantileDefinition
{
    private QuantileDefinition(double plottingConstant) => PlottingConstant = plottingConstant;

    /// <summary>Definition 5, a = 1/2 (Hazen 1914): the middles of n equal steps.</summary>
    public static QuantileDefinition Hazen { get; } = new(0.5);

    /// <summary>Definition 6, a = 0 (Weibull 1939): the expected rank.</summary>
    public static QuantileDefinition Weibull { get; } = new(0);

    /// <summary>Definition 7, a = 1 (Gumbel 1939): ends at 0 and 1.</summary>
    public static QuantileDefinition Gumbel { get; } = new(1);

    /// <summary>Definition 8, a = 1/3: about median-unbiased for any distribution.</summary>
    public static QuantileDefinition MedianUnbiased { get; } = new(1.0 / 3);

    /// <summary>Definition 9, a = 3/8 (Blom 1958): about unbiased for normal values.</summary>
    public static QuantileDefinition NormalUnbiased { get; } = new(0.375);

    public double PlottingConstant { get; }
}
