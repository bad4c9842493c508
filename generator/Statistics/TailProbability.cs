using MathNet.Numerics;

namespace CareSheets.Statistics;

/// <summary>How rarely chance alone would stray at least this far, in either direction.</summary>
public static class TailProbability
{
    /// <summary>
    /// Two-sided p of a standard normal deviate: erfc(|z|/√2). Exact to rounding far out, down
    /// to the smallest double near |z| = 38, then 0. Abramowitz and Stegun 1964, 7.1.2, 26.2.29.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public static double TwoSidedNormal(double z) =>
        SpecialFunctions.Erfc(Math.Abs(Require.Finite(z)) / Math.Sqrt(2));

    /// <summary>
    /// Two-sided p of a Student deviate with any positive degrees of freedom. Abramowitz and
    /// Stegun 1964, 26.7.1 with 26.5.27.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">NaN, infinite, or no freedom.</exception>
    public static double TwoSidedStudent(double t, double degreesOfFreedom) =>
        2 * Student.From(0, 1, degreesOfFreedom).Cdf(-Math.Abs(t));
}
