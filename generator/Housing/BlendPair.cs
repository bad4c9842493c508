using CareSheets.Quantities;
using CareSheets.Species;
using CareSheets.Water;

namespace CareSheets.Housing;

/// <summary>Two waters, and which shares of them a species can live in.</summary>
internal sealed class BlendPair(
    WaterSource one, WaterSource other, Entry entry, IReadOnlyList<CareRangeDeclaration> ranges)
{
    /// <summary>What mixes in proportion; conductivity does nearly.</summary>
    private static readonly Dimension[] Proportional =
    [
        DimensionCatalogue.GeneralHardness, DimensionCatalogue.CarbonateHardness,
        DimensionCatalogue.Conductivity, DimensionCatalogue.Salinity,
    ];

    public BlendOffer? Offer()
    {
        if (Shares() is not var (low, high))
            return null;
        var share = Share.FromParts(Choose(low, high));
        var acidity = AcidityOf(share);
        return acidity is { } pH && Keep(DimensionCatalogue.Acidity) is { } keep && !keep.As<Acidity>().Overlaps(pH)
            ? null
            : new BlendOffer(
                one, other, Range<Share>.Between(Share.FromParts(low), Share.FromParts(high)), share,
                HardnessOf(share), acidity);
    }

    /// <summary>From the least to the most of the first water; nothing where no share does.</summary>
    private (double Low, double High)? Shares()
    {
        var (low, high, asked) = (0.0, 1.0, false);
        foreach (var declared in ranges.Where(r => Proportional.Contains(r.Dimension)))
        {
            if (entry.Range(declared.Field)?.Of(RangeKind.Keep)?.Range.Value is not { } keep)
            {
                if (declared.IsAlwaysShown)
                    return null; // what counts and is unknown can't be met
                continue;
            }
            if (Figure(one, declared) is not var (a, b) || Figure(other, declared) is not var (c, d))
            {
                if (declared.IsAlwaysShown)
                    return null;
                continue;
            }
            asked = true;
            Narrow(ref low, ref high, a - c, (keep.Low ?? double.NegativeInfinity) - c);
            Narrow(ref low, ref high, d - b, d - (keep.High ?? double.PositiveInfinity));
        }
        return asked && low <= high ? (low, high) : null;
    }

    /// <summary>Keeps the shares for which slope × share is at least this.</summary>
    private static void Narrow(ref double low, ref double high, double slope, double least)
    {
        if (slope > 0)
            low = Math.Max(low, least / slope);
        else if (slope < 0)
            high = Math.Min(high, least / slope);
        else if (least > 0)
            high = -1;
    }

    private static double Choose(double low, double high)
    {
        var middle = (low + high) / 2;
        var step = Math.Round(middle * 20) / 20;
        return step >= low && step <= high ? step : middle;
    }

    private static (double Low, double High)? Figure(WaterSource water, CareRangeDeclaration declared) =>
        water.Kind == WaterSourceKind.Pure ? (0, 0)
        : water.Water.Figures.GetValueOrDefault(declared.Field) is { Low: { } low, High: { } high } ? (low, high)
        : declared.Dimension == DimensionCatalogue.Salinity ? (0, 0)
        : null;

    private double? Middle(WaterSource water, Dimension dimension) =>
        ranges.FirstOrDefault(r => r.Dimension == dimension) is { } declared &&
        Figure(water, declared) is var (low, high)
            ? (low + high) / 2
            : null;

    private StatedRange? Keep(Dimension dimension) =>
        ranges.FirstOrDefault(r => r.Dimension == dimension) is { } declared
            ? entry.Range(declared.Field)?.Of(RangeKind.Keep)?.Range.Value
            : null;

    private GeneralHardness? HardnessOf(Share share)
    {
        GeneralHardness? Of(WaterSource water) =>
            Middle(water, DimensionCatalogue.GeneralHardness) is { } figure
                ? GeneralHardness.FromMilligramsPerLitre(figure) : null;
        return Of(one) is { } a && Of(other) is { } b ? Blend.Of(a, b, share).Value : null;
    }

    private Range<Acidity>? AcidityOf(Share share)
    {
        if (Carbonate(one) is not { } a || Carbonate(other) is not { } b)
            return null;
        var mixed = a.Then(x => b.Then(y => CarbonateWater.Mix(x, share.InParts, y, 1 - share.InParts)));
        var aired = mixed.Then(m => CarbonateWater.Aired(m.Alkalinity, m.Temperature));
        return mixed.Ok && aired.Ok
            ? Range<Acidity>.Exactly(mixed.Value.PH).Hull(Range<Acidity>.Exactly(aired.Value.PH))
            : null;
    }

    /// <summary>Nothing where a figure is missing; pure water has stood in the air, as warm as the other.</summary>
    private SumResult<CarbonateWater>? Carbonate(WaterSource water)
    {
        var warmth = Warmth(water) ?? Warmth(one);
        if (warmth is not { } celsius)
            return null;
        if (water.Kind == WaterSourceKind.Pure)
            return CarbonateWater.Aired(default, celsius);
        return Middle(water, DimensionCatalogue.CarbonateHardness) is { } alkalinity &&
            Middle(water, DimensionCatalogue.Acidity) is { } pH
                ? CarbonateWater.Of(CarbonateHardness.FromMilligramsPerLitre(alkalinity), Acidity.FromPH(pH), celsius)
                : null;
    }

    private Temperature? Warmth(WaterSource water) =>
        water.Kind != WaterSourceKind.Pure && Middle(water, DimensionCatalogue.Temperature) is { } celsius
            ? Temperature.FromCelsius(celsius)
            : null;
}
