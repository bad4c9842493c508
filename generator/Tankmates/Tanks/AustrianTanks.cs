namespace CareSheets.Tankmates.Tanks;

/// <summary>
/// Austrian standard tanks, and the volume below which fish may not be kept for good there (2.
/// Tierhaltungsverordnung, Annex 5; the sizes were read in a draft of the rules for trade and have
/// to be checked at the authority). Shown as what they are.
/// </summary>
public static class AustrianTanks
{
    /// <summary>In L.</summary>
    public const double Least = 54;

    /// <summary>Length, width and height in cm, from small to large.</summary>
    public static readonly IReadOnlyList<(double Length, double Width, double Height)> Standard =
        [(60, 30, 30), (80, 35, 40), (100, 40, 50), (120, 40, 50), (150, 50, 50)];

    /// <summary>The largest standard tank that is no larger on any side than this one, or nothing.</summary>
    public static (double Length, double Width, double Height)? Within(TankSize tank) =>
        tank is { Length: { } length, Width: { } width, Height: { } height }
            ? Standard.Where(s => s.Length <= length.InCentimetres && s.Width <= width.InCentimetres &&
                    s.Height <= height.InCentimetres)
                .Select(s => ((double, double, double)?)s).LastOrDefault()
            : null;
}
