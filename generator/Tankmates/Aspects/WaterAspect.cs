using System.Collections.Frozen;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Tankmates.Aspects;

/// <summary>One figure of the water that both have to share.</summary>
public sealed class WaterAspect(CareRangeDeclaration range) : IAspect
{
    /// <summary>
    /// What is left in common must be wider than this, or a heater's or a week's swing leaves it:
    /// 2 K, 0.5 pH, 3 °dH (common practice, no source). Ranges without a figure here need only
    /// overlap.
    /// </summary>
    private static readonly FrozenDictionary<string, double> Narrow = new Dictionary<string, double>
    {
        ["temperature"] = TemperatureDifference.FromKelvins(2).Canonical,
        ["ph"] = AcidityDifference.FromCanonical(0.5).Canonical,
        ["hardness"] = GeneralHardness.FromGermanDegrees(3).Canonical,
    }.ToFrozenDictionary();

    /// <summary>Sums like 24 + 2 differ from 26 in the last bits; no fish feels this.</summary>
    private const double Rounding = 1e-9;

    public string Name => range.Field;

    public bool IsMutual => true;

    /// <summary>
    /// Ranges that customers are told of even when unknown, and salt; the others say little that
    /// those don't and are compared where both species state them.
    /// </summary>
    private bool IsNeeded => range.IsAlwaysShown || range.Dimension == DimensionCatalogue.Salinity;

    /// <summary>The width in the canonical unit up to which a range counts as narrow, or 0.</summary>
    public static double NarrowUpTo(CareRangeDeclaration range) => Narrow.GetValueOrDefault(range.Field);

    public object Facet(Tankmate mate) => (mate.Need(range)?.Keep, mate.Need(range)?.Prefers);

    public IEnumerable<Detail> Details(Tankmate mate) =>
    [
        Detail.Of("range", range.Dimension, mate.Need(range)?.Keep),
        Detail.Of("best", range.Dimension, mate.Need(range)?.Best),
    ];

    public IEnumerable<Reason> Judge(Tankmate one, Tankmate other)
    {
        var (need, others) = (one.Need(range), other.Need(range));
        if (need?.Keep is not { } here || others?.Keep is not { } there)
            return IsNeeded ? [Reason.Unknown(range.Field, need?.Keep is not null, others?.Keep is not null)] : [];
        if (here.Overlap(there) is not { } shared)
            return [new Reason(ReasonKind.WaterApart, Verdict.KeepApart, range.Field)];
        if (IsNarrow(shared))
            return [Of(ReasonKind.WaterNarrow, shared)];
        return IsNarrow((need.Best ?? here).Overlap(others.Best ?? there)) ? [Of(ReasonKind.BestApart, shared)] : [];
    }

    private Reason Of(ReasonKind kind, Stretch shared) =>
        new(kind, Verdict.WithCare, range.Field, shared, range.Dimension);

    private bool IsNarrow(Stretch? shared) => NarrowUpTo(range) is var limit and > 0 &&
        (shared is not { } both || both.Width <= limit + Rounding);
}
