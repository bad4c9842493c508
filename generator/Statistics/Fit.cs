namespace CareSheets.Statistics;

/// <summary>
/// Rank variances estimated from a sample, how well they explain it, and what they foretell.
/// </summary>
/// <remarks>
/// With a prior every variance is above 0; without one a group rank's may be exactly 0. The
/// likelihood is of the values alone; the prior does not count in. Forecasts take the fitted
/// variances as if known, so with few values their intervals are too narrow: simulated with
/// three group ranks, four equal variances and the weak prior, 95 % intervals for leaves not
/// seen held 86 % at 6 values, 89 % at 10, 92 % at 20 and 94 % at 40.
/// </remarks>
public sealed record Fit(
    RankVariances Variances, NestedLikelihood Likelihood, NestedPredictions Predictions);
