using MathNet.Numerics;

namespace CareSheets.Statistics;

/// <summary>
/// A normal forecast of one value, and how good it proves once the value is known.
/// </summary>
public sealed record Normal
{
    private Normal(double mean, double standardDeviation)
    {
        Mean = mean;
        StandardDeviation = standardDeviation;
    }

    public double Mean { get; }

    public double StandardDeviation { get; }

    /// <exception cref="ArgumentOutOfRangeException">
    /// A mean that is not finite, or a standard deviation not above 0.
    /// </exception>
    public static Normal From(double mean, double standardDeviation) =>
        new(Require.Finite(mean), Require.Positive(standardDeviation));

    /// <exception cref="ArgumentOutOfRangeException">As <see cref="From"/>.</exception>
    public static Normal FromVariance(double mean, double variance) =>
        From(mean, Math.Sqrt(variance));

    /// <summary>The distance of a value from the mean in standard deviations.</summary>
    public double Z(double value) => (Require.Finite(value) - Mean) / StandardDeviation;

    /// <summary>
    /// The probability of a smaller value; applied to what happened, the probability integral
    /// transform (PIT), uniform on 0-1 when forecasts are right (Dawid 1984, JRSS A 147:278-292).
    /// </summary>
    public double Cdf(double value) => 0.5 * SpecialFunctions.Erfc(-Z(value) / Math.Sqrt(2));

    /// <summary>The value with the given probability, between 0 and 1, of a smaller one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">0, 1 or beyond.</exception>
    public double Quantile(double probability)
    {
        var reach = SpecialFunctions.ErfcInv(2 * Require.Share(probability));
        return Mean - StandardDeviation * Math.Sqrt(2) * reach;
    }

    /// <summary>
    /// The interval that holds the share <paramref name="coverage"/>, such as 0.8, with equal
    /// probability beyond either end.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">0, 1 or beyond.</exception>
    public Interval CentralInterval(double coverage)
    {
        var half = SpecialFunctions.ErfInv(Require.Share(coverage));
        var reach = StandardDeviation * Math.Sqrt(2) * half;
        return Interval.Between(Mean - reach, Mean + reach);
    }

    /// <summary>
    /// Minus the natural log of the density at what happened. Small is good. Good 1952, JRSS B
    /// 14:107-114.
    /// </summary>
    public double LogScore(double value) =>
        0.5 * (Math.Log(2 * Math.PI) + Z(value) * Z(value)) + Math.Log(StandardDeviation);

    /// <summary>
    /// Continuous ranked probability score, in the units of the value; small is good:
    /// σ [z (2Φ(z) - 1) + 2φ(z) - 1/√π]. Gneiting and Raftery 2007, JASA 102:359-378, with
    /// the sign turned.
    /// </summary>
    public double Crps(double value)
    {
        var z = Z(value);
        var density = Math.Exp(-0.5 * z * z) / Math.Sqrt(2 * Math.PI);
        var twiceCdfLessOne = SpecialFunctions.Erf(z / Math.Sqrt(2));
        return StandardDeviation * (z * twiceCdfLessOne + 2 * density - 1 / Math.Sqrt(Math.PI));
    }
}
