namespace CareSheets.Statistics;

/// <summary>
/// How far a value lies from what a linear model fitted without it foretells, in standard errors
/// of that forecast.
/// </summary>
public static class DeletionResidual
{
    /// <summary>
    /// The externally studentised residual e / (s √(1-h)), with s² the residual variance of the
    /// fit without the value; Student with one degree of freedom less than the fit has. Null when
    /// fewer than 2 degrees are left, when the fit is bound to the value (h = 1), or when the
    /// others fit exactly. Belsley, Kuh and Welsch 1980, Regression Diagnostics; Cook and
    /// Weisberg 1982, Residuals and Influence in Regression.
    /// </summary>
    /// <param name="residual">e, of the value in the fit to all values.</param>
    /// <param name="leverage">h, from 0 to 1: the share the value has in its own fit.</param>
    /// <param name="sumOfSquares">Of all residuals of that fit.</param>
    /// <param name="degreesOfFreedom">Values less fitted coefficients.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number outside its range.</exception>
    public static double? Compute(
        double residual, double leverage, double sumOfSquares, int degreesOfFreedom)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(Require.Finite(sumOfSquares));
        var rest = 1 - Require.Probability(leverage);
        var without = sumOfSquares - Require.Finite(residual) * residual / rest;
        return degreesOfFreedom < 2 || rest == 0 || !(without > 0)
            ? null
            : residual / Math.Sqrt(without / (degreesOfFreedom - 1) * rest);
    }
}
