using CareSheets.Collection;
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
    /// <summary>What relatives suggest where the entry is silent; nothing where they can't tell.</summary>
    public SuggestedRange? Suggested { get; private init; }

    /// <summary>Nothing where neither says anything and nobody is told of it as unknown.</summary>
    internal static FigureInWater? Compare(
        CareRangeDeclaration declared, Entry entry, WaterSource water, SpeciesCollection collection, AskRelatives ask)
    {
        var keep = entry.Range(declared.Field)?.Of(RangeKind.Keep)?.Range.Value;
        var given = water.Water.Figures.GetValueOrDefault(declared.Field);
        var bare = new FigureInWater(declared, keep, given, FigureStanding.Fits, 0);
        if (declared.Dimension == DimensionCatalogue.Salinity)
            return keep is null && !FreshWater.GoesWithoutSaying(entry, collection)
                ? bare.Unknown(ask(entry, declared))
                : keep is null && given is null ? null
                : bare.Held(keep?.Low, keep?.High ?? FreshWater.UpTo, FreshWater.UpTo);
        if ((keep is null || given is null) && !declared.IsAlwaysShown)
            return null;
        if (water.Kind == WaterSourceKind.Tap && declared.Dimension == DimensionCatalogue.Temperature)
            return bare with { Standing = FigureStanding.LeftToHeater };
        return keep is null ? bare.Unknown(ask(entry, declared))
            : given is null ? bare with { Standing = FigureStanding.UnknownOfWater }
            : bare.Held(keep.Low, keep.High, null);
    }

    /// <summary>Relatives can speak against a water and never for it.</summary>
    private FigureInWater Unknown(SuggestedRange? suggested)
    {
        var isApart = suggested is not null && Given is not null &&
            (Held(suggested.Low, suggested.High, null).Standing is FigureStanding.TooLow or FigureStanding.TooHigh);
        return this with
        {
            Suggested = suggested,
            Standing = isApart ? FigureStanding.RelativesApart : FigureStanding.UnknownOfSpecies,
        };
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
