namespace CareSheets.Quantities.Notation;

/// <summary>Rounding to multiples of a step, proof against the noise of conversion.</summary>
internal static class Step
{
    /// <summary>
    /// Relative; far above the 1e-15 that conversions leave (72 °F by way of 22.222… °C must stay
    /// 72) and far below anything a thermometer or a ruler tells apart.
    /// </summary>
    private const double Noise = 1e-9;

    /// <summary>
    /// Step and refinement come apart so that 0.1 ÷ 10 leaves no noise of its own.
    /// </summary>
    public static double Round(double value, double step, double refinement, Rounding rounding)
    {
        var steps = value * refinement / step;
        var nearest = Math.Round(steps, MidpointRounding.AwayFromZero);
        var whole = AreSame(steps, nearest) ? nearest : rounding switch
        {
            Rounding.Upward => Math.Ceiling(steps),
            Rounding.Downward => Math.Floor(steps),
            Rounding.Nearest => nearest,
            Rounding.Inward or _ => throw new ArgumentOutOfRangeException(nameof(rounding)),
        };
        return whole * step / refinement;
    }

    public static bool AreSame(double one, double other) =>
        Math.Abs(one - other) <= Noise * Math.Max(1, Math.Abs(one));
}
