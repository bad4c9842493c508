using CareSheets.Quantities;

namespace CareSheets.Proofing.Prose;

/// <summary>
/// Whether a quantity in prose agrees with the figure of the entry. People round in prose, so each
/// kind has its slack (our own choice, set so that rounding to a handy figure in the other unit system
/// never disagrees).
/// </summary>
internal static class Agreement
{
    public static bool IsAgreed(ProseQuantity quantity, EntryFigure figure) => quantity.Kind switch
    {
        ProseKind.Temperature => WithinWater(quantity, figure, 0.8),
        ProseKind.Acidity => WithinWater(quantity, figure, 0.15),
        ProseKind.GeneralHardness or ProseKind.CarbonateHardness =>
            WithinWater(quantity, figure, HardnessSlack(figure)),
        ProseKind.Salinity => WithinWater(quantity, figure, 0.1 * (figure.High ?? 1)),
        ProseKind.Length => IsLength(quantity, figure),
        ProseKind.LifeSpan => IsSpan(quantity, figure),
        ProseKind.TankLength => IsEnough(quantity, figure, 0.05),
        ProseKind.TankVolume => IsEnough(quantity, figure, 0.1),
        ProseKind.Group => IsEnough(quantity, figure, 0),
    };

    private static double HardnessSlack(EntryFigure figure) =>
        Math.Max(0.06 * (figure.High ?? 0), DimensionCatalogue.GeneralHardness.Find("°dH")!.ToCanonical(0.6));

    /// <summary>
    /// What is stated lies within the range. A limit is one of its ends, or lies nearer to that end
    /// than a quarter of the range.
    /// </summary>
    private static bool WithinWater(ProseQuantity quantity, EntryFigure figure, double slack)
    {
        var near = Math.Max(slack, 0.25 * Math.Max(0, (figure.High ?? 0) - (figure.Low ?? 0)));
        bool IsEnd(double value, double? end, double? best) =>
            end is not { } limit || Math.Abs(value - limit) <= near ||
            (best is { } at && Math.Abs(value - at) <= slack);
        return quantity.Bound switch
        {
            ProseBound.Exact => !(quantity.Low < figure.Low - slack) && !(quantity.High > figure.High + slack),
            ProseBound.AtMost =>
                !(quantity.High > figure.High + slack) && IsEnd(quantity.High, figure.High, figure.Best?.High),
            ProseBound.AtLeast =>
                !(quantity.Low < figure.Low - slack) && IsEnd(quantity.Low, figure.Low, figure.Best?.Low),
            ProseBound.Beyond => figure.High is not { } high || quantity.Low < high - near,
            // harm may begin well outside of what it is kept in, and at its ends, but not within
            ProseBound.HarmAbove => figure.High is not { } most || quantity.High >= most - near,
            ProseBound.HarmBelow => figure.Low is not { } fewest || quantity.Low <= fewest + near,
        };
    }

    /// <summary>An entry gives the length of the larger sex: the other may be shorter.</summary>
    private static bool IsLength(ProseQuantity quantity, EntryFigure figure)
    {
        var (low, high) = (0.83 * figure.Low!.Value, 1.17 * figure.High!.Value);
        return quantity.Bound switch
        {
            ProseBound.AtMost or ProseBound.HarmAbove =>
                quantity.High >= low && quantity.High <= 1.5 * figure.High!.Value,
            ProseBound.AtLeast or ProseBound.Beyond or ProseBound.HarmBelow => quantity.Low <= high,
            ProseBound.Exact => quantity.High <= high && (quantity.OfOneSex || quantity.High >= low),
        };
    }

    private static bool IsSpan(ProseQuantity quantity, EntryFigure figure)
    {
        var (low, high) = (0.8 * (figure.Low ?? 0), 1.2 * (figure.High ?? double.MaxValue));
        return quantity.Bound switch
        {
            ProseBound.AtMost or ProseBound.HarmAbove => quantity.High >= low && quantity.High <= high,
            ProseBound.AtLeast or ProseBound.Beyond or ProseBound.HarmBelow => quantity.Low <= high,
            ProseBound.Exact => quantity.Low >= low && quantity.High <= high,
        };
    }

    /// <summary>
    /// The entry gives the least. Less than that never agrees; more only disagrees where the prose
    /// calls it the least.
    /// </summary>
    private static bool IsEnough(ProseQuantity quantity, EntryFigure figure, double slack)
    {
        var least = figure.Low!.Value;
        return quantity.Bound switch
        {
            ProseBound.AtLeast or ProseBound.HarmBelow =>
                quantity.High >= least * (1 - slack) && quantity.Low <= least * (1 + slack),
            ProseBound.AtMost or ProseBound.HarmAbove => quantity.High >= least * (1 - slack),
            ProseBound.Exact or ProseBound.Beyond => quantity.High >= least * (1 - slack),
        };
    }
}
