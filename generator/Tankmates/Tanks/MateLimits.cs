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
    /// Where an entry states only the length of its tank: at least twice the fish from front to
    /// back and once in height (Swiss Animal Protection Ordinance, SR 455.1, Annex 2, Table 8).
    /// </summary>
    private const double WidthPerFish = 2;

    public static IReadOnlyList<Limits> OfTank(Tankmate mate)
    {
        var (housing, fish) = (mate.Housing, mate.Body.Length.High);
        return
        [
            AtLeast("length", DimensionCatalogue.Length, housing.Length),
            AtLeast("width", DimensionCatalogue.Length, housing.Width ?? WidthPerFish * fish),
            AtLeast("height", DimensionCatalogue.Length, housing.Height ?? fish),
            AtLeast("volume", DimensionCatalogue.Volume, housing.Volume),
        ];
    }

    /// <summary>
    /// Half of what counts as a narrow overlap is a slip that nearly fits: 1 K, 0.25 pH, 1.5 °dH
    /// (common practice, no source).
    /// </summary>
    public static IReadOnlyList<Limits> OfWater(Tankmate mate, IEnumerable<CareRangeDeclaration> ranges) =>
    [
        .. from range in ranges
           let keep = mate.Need(range)?.Keep
           let margin = WaterAspect.NarrowUpTo(range) / 2
           select new Limits(range.Field, range.Dimension, keep,
               keep is { } known ? Stretch.Between(known.Low - margin, known.High + margin) : null),
    ];

    private static Limits AtLeast(string field, Dimension dimension, double least) => new(
        field, dimension,
        Stretch.Between(least, double.PositiveInfinity), Stretch.Between(NearlyShare * least, double.PositiveInfinity));
}
