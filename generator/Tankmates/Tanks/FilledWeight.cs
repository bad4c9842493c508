namespace CareSheets.Tankmates.Tanks;

/// <summary>
/// About how heavy a filled tank is. It is no basis for building: floor, stand and electrics are
/// for the maker, a structural engineer and the local code.
/// </summary>
public static class FilledWeight
{
    /// <summary>
    /// Usual glass by height (common practice, no source). Higher tanks are made to order, so
    /// nothing is said of them.
    /// </summary>
    public static readonly IReadOnlyList<WeightStep> Steps =
        [new(30, 0.6), new(40, 0.8), new(50, 1.0), new(60, 1.2), new(70, 1.5)];

    /// <summary>In kg; nothing without sides or for a height without a usual glass.</summary>
    public static double? Estimate(TankSize tank)
    {
        if (tank is not { Length: { } length, Width: { } width, Height: { } height })
            return null;
        var (l, w, h) = (length.InCentimetres, width.InCentimetres, height.InCentimetres);
        return Steps.FirstOrDefault(s => h <= s.UpTo)?.Of(l, w, h);
    }
}
