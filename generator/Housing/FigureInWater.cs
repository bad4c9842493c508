using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Housing;

/// <summary>One figure of a water held against what a species needs.</summary>
/// <param name="Keep">As the entry states it, or nothing.</param>
/// <param name="Given">As the shop states it, or nothing.</param>
/// <param name="By">By how much it is too low or too high, in the canonical unit of a difference; else 0.</param>
public sealed record FigureInWater(
    CareRangeDeclaration Declaration, StatedRange? Keep, StatedRange? Given, FigureStanding Standing, double By)
{
    /// <summary>Nothing where neither says anything and nobody is told of it as unknown.</summary>
    internal static FigureInWater? Compare(CareRangeDeclaration declared, Entry entry, WaterSource water)
    {
        var keep = entry.Range(declared.Field)?.Of(RangeKind.Keep)?.Range.Value;
        var given = water.Water.Figures.GetValueOrDefault(declared.Field);
        // An entry or a system that is silent on salt means fresh water.
        if (declared.Dimension == DimensionCatalogue.Salinity)
            return keep is null && given is null ? null
                : new FigureInWater(declared, keep, given, FigureStanding.Fits, 0)
                    .Held(keep?.Low, keep?.High ?? Salinity.FreshUpTo, Salinity.FreshUpTo);
        if ((keep is null || given is null) && !declared.IsAlwaysShown)
            return null;
        if (water.Kind == WaterSourceKind.Tap && declared.Dimension == DimensionCatalogue.Temperature)
            return new FigureInWater(declared, keep, given, FigureStanding.LeftToHeater, 0);
        if (keep is null || given is null)
            return new FigureInWater(
                declared, keep, given,
                keep is null ? FigureStanding.UnknownOfSpecies : FigureStanding.UnknownOfWater, 0);
        return new FigureInWater(declared, keep, given, FigureStanding.Fits, 0).Held(keep.Low, keep.High, null);
    }

    private FigureInWater Held(double? low, double? high, double? otherwise)
    {
        var (least, most) = Given is null ? (0, otherwise) : (Given.Low, Given.High);
        if (low is { } from && !(least >= from))
            return this with { Standing = FigureStanding.TooLow, By = from - (least ?? Declaration.Dimension.Minimum) };
        if (high is { } to && !(most <= to))
            return this with { Standing = FigureStanding.TooHigh, By = (most ?? double.PositiveInfinity) - to };
        return this;
    }
}
