using MathNet.Numerics;

namespace CareSheets.Statistics;

/// <summary>
/// A Student t forecast of one value: the place of a normal one where the scatter itself is only
/// estimated.
/// </summary>
public sealed record Student
{
    private Student(double location, double scale, double degreesOfFreedom)
    {
        Location = location;
        Scale = scale;
        DegreesOfFreedom = degreesOfFreedom;
    }

    public double Location { get; }

    /// <summary>Not the standard deviation, which is larger or infinite.</summary>
    public double Scale { get; }

    public double DegreesOfFreedom { get; }

    /// <exception cref="ArgumentOutOfRangeException">
    /// A location that is not finite, or a scale or degrees of freedom not above 0.
    /// </exception>
    public static Student From(double location, double scale, double degreesOfFreedom) => new(
        Require.Finite(location), Require.Positive(scale), Require.Positive(degreesOfFreedom));

    /// <summary>The distance of a value from the location in units of scale.</summary>
    public double T(double value) => (Require.Finite(value) - Location) / Scale;

    /// <summary>
    /// The probability of a smaller value, by the incomplete beta function (Abramowitz and
    /// Stegun 1964, 26.7.1 and 26.5.27); also the PIT of what happened.
    /// </summary>
    public double Cdf(double value) => StandardCdf(T(value));

    /// <summary>The value with the given probability, between 0 and 1, of a smaller one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">0, 1 or beyond.</exception>
    public double Quantile(double probability)
    {
        var tail = Math.Min(Require.Share(probability), 1 - probability);
        var reach = MonotoneRoot.Above(0, t => tail - UpperTail(t));
        return Location + Math.Sign(probability - 0.5) * reach * Scale;
    }

    /// <summary>
    /// The interval that holds the share <paramref name="coverage"/> with equal probability
    /// beyond either end.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">0, 1 or beyond.</exception>
    public Interval CentralInterval(double coverage)
    {
        var reach = Quantile(0.5 + 0.5 * Require.Share(coverage)) - Location;
        return Interval.Between(Location - reach, Location + reach);
    }

    /// <summary>
    /// Minus the natural log of the density at what happened. Small is good.
    /// </summary>
    public double LogScore(double value) =>
        Math.Log(Scale) - LogStandardDensity(T(value));

    /// <summary>
    /// Continuous ranked probability score, in the units of the value; small is good. Null at 1
    /// or fewer degrees of freedom, where it is infinite. Formula: Jordan, Krüger and Lerch
    /// 2019, J. Stat. Softw. 90(12).
    /// </summary>
    public double? Crps(double value)
    {
        var nu = DegreesOfFreedom;
        if (nu <= 1)
        {
            return null;
        }

        var t = T(value);
        var spread = 2 * Math.Sqrt(nu) / (nu - 1) * Math.Exp(
            SpecialFunctions.BetaLn(0.5, nu - 0.5) - 2 * SpecialFunctions.BetaLn(0.5, nu / 2));
        var density = Math.Exp(LogStandardDensity(t));
        var centre = t * (2 * StandardCdf(t) - 1);
        return Scale * (centre + 2 * density * (nu + t * t) / (nu - 1) - spread);
    }

    private double StandardCdf(double t) => t < 0 ? UpperTail(-t) : 1 - UpperTail(t);

    /// <summary>For t of 0 or more; halved once, so no digit is lost far out.</summary>
    private double UpperTail(double t) => 0.5 * SpecialFunctions.BetaRegularized(
        DegreesOfFreedom / 2, 0.5, DegreesOfFreedom / (DegreesOfFreedom + t * t));

    private double LogStandardDensity(double t) =>
        -0.5 * (DegreesOfFreedom + 1) * Math.Log(1 + t * t / DegreesOfFreedom)
        - 0.5 * Math.Log(DegreesOfFreedom)
        - SpecialFunctions.BetaLn(0.5, DegreesOfFreedom / 2);
}
