using CareSheets.Collection;
using CareSheets.Quantities;
using CareSheets.Species;
using CareSheets.Tankmates.Aspects;

namespace CareSheets.Tankmates.Tanks;

/// <summary>What a species asks of a tank and of its water, as limits.</summary>
public static class MateLimits
{
    /// <summary>A tank that lacks no more than a tenth nearly fits (common practice, no source).</summary>
    private const double NearlyShare = 0.9;

    /// <summary>
    /// Sides that an entry does not state are held against the least that the Swiss table asks for a fish of its
    /// length, and are told as that, never as the need of the species.
    /// </summary>
    public static IReadOnlyList<Limits> OfTank(Tankmate mate)
    {
        var (housing, fish) = (mate.Housing, SwissSpace.LengthOf(mate));
        return
        [
            AtLeast("length", DimensionCatalogue.Length, housing.Length),
            Side("width", housing.Width, SwissSpace.Sides.Width * fish),
            Side("height", housing.Height, SwissSpace.Sides.Height * fish),
            AtLeast("volume", DimensionCatalogue.Volume, housing.Volume),
        ];
    }

    /// <summary>
    /// Salt is asked for even where a customer says nothing of the water: a fish that needs it dies without. None
    /// where the schema knows no salinity.
    /// </summary>
    public static IReadOnlyList<Limits> OfSalt(Tankmate mate) =>
    [
        .. mate.Water.Where(w => w.Declaration.Dimension == DimensionCatalogue.Salinity)
            .Select(w => OfWater(mate, w.Declaration)),
    ];

    public static IReadOnlyList<Limits> OfWater(Tankmate mate, IEnumerable<CareRangeDeclaration> ranges) =>
        [.. ranges.Select(range => OfWater(mate, range))];

    /// <summary>
    /// Half of what counts as a narrow overlap is a slip that nearly fits: 1 K, 0.25 pH, 1.5 °dH
    /// (common practice, no source). What relatives suggest has no such slip: it is a guess already.
    /// </summary>
    private static Limits OfWater(Tankmate mate, CareRangeDeclaration range)
    {
        var need = mate.Need(range);
        if (need?.Keep is { } keep)
        {
            var margin = WaterAspect.NarrowUpTo(range) / 2;
            return new Limits(
                range.Field, range.Dimension, need.IsAssumed ? LimitBasis.FreshWater : LimitBasis.Sheet, keep,
                Stretch.Between(keep.Low - margin, keep.High + margin))
            {
                WhenNotGiven = range.Dimension == DimensionCatalogue.Salinity && keep.Low <= FreshWater.UpTo
                    ? Fit.Fits : Fit.NotKnown,
            };
        }
        return need?.Suggested is { } suggested
            ? new Limits(range.Field, range.Dimension, LimitBasis.Relatives, suggested, suggested)
            : new Limits(range.Field, range.Dimension, LimitBasis.Nobody);
    }

    private static Limits Side(string field, double? stated, double byLaw) => stated is { } least
        ? AtLeast(field, DimensionCatalogue.Length, least)
        : new Limits(field, DimensionCatalogue.Length, LimitBasis.Law, From(byLaw), From(byLaw))
        {
            WhenNotGiven = Fit.Fits,
        };

    private static Limits AtLeast(string field, Dimension dimension, double least) =>
        new(field, dimension, LimitBasis.Sheet, From(least), From(NearlyShare * least));

    private static Stretch From(double least) => Stretch.Between(least, double.PositiveInfinity);
}
