namespace CareSheets.Quantities.Notation;

/// <summary>Rounding to multiples of a step, proof against the noise of conversion.</summary>
internal static class Step
{
    /// <summary>
    /// How often a step is divided by ten at most: finer figures would not read back, and nobody
    /// measures them.
    /// </summary>
    public const int Finest = 5;

    /// <summary>
    /// Relative; far above the 1e-15 that conversions leave (72 °F by way of 22.222… °C must stay
    /// 72) and far below anything a thermometer or a ruler tells apart.
    /// </summary>
    private const double Noise = 1e-9;

    /// <summary>To a multiple of the step divided by ten as many times as said.</summary>
    public static double Round(double value, double step, int tenths, Rounding rounding)
    {
        var finer = Math.Pow(10, tenths); // apart from the step: 0.1 ÷ 10 has noise of its own
        var steps = value * finer / step;
        var nearest = Math.Round(steps, MidpointRounding.AwayFromZero);
        var whole = AreSame(steps, nearest) ? nearest : rounding switch
        {
            Rounding.Upward => Math.Ceiling(steps),
            Rounding.Downward => Math.Floor(steps),
            Rounding.Nearest => nearest,
            Rounding.Inward => throw new ArgumentOutOfRangeException(
                nameof(rounding), rounding, "One figure has no inside."),
        };
        return whole * step / finer;
    }

    public static bool AreSame(double one, double other) =>
        Math.Abs(one - other) <= Noise * Math.Max(1, Math.Abs(one));
}
