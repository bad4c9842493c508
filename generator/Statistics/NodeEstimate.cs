namespace CareSheets.Statistics;

/// <summary>
/// A best linear unbiased prediction with the standard deviation of its error, in the units of
/// the response.
/// </summary>
/// <remarks>
/// The standard error is 0 where the model leaves no doubt, as with an effect whose rank has
/// variance 0. Henderson 1975, Biometrics 31:423-447.
/// </remarks>
public sealed record NodeEstimate
{
    internal NodeEstimate(double value, double variance)
    {
        Value = value;
        StandardError = Math.Sqrt(variance);
    }

    public double Value { get; }

    public double StandardError { get; }
}
