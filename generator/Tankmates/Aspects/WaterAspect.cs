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
    private const double Noise = 1e-9;

    /// <summary>Key of the words around a figure that relatives suggest.</summary>
    private const string SuggestedWord = "mate_range.suggested";

    public string Name => range.Field;

    public bool IsMutual => true;

    /// <summary>
    /// Ranges that customers are told of even when unknown, and salt; the others say little that
    /// those don't and are compared where both species state them.
    /// </summary>
    public static bool IsNeeded(CareRangeDeclaration range) =>
        range.IsAlwaysShown || range.Dimension == DimensionCatalogue.Salinity;

    /// <summary>The width in the canonical unit up to which a range counts as narrow, or 0.</summary>
    public static double NarrowUpTo(CareRangeDeclaration range) => Narrow.GetValueOrDefault(range.Field);

    public object Facet(Tankmate mate) =>
        (mate.Need(range)?.Keep, mate.Need(range)?.Prefers, mate.Need(range)?.Suggested);

    public IEnumerable<Detail> Details(Tankmate mate)
    {
        var need = mate.Need(range);
        return
        [
            need is { Keep: null, Suggested: { } suggested }
                ? Detail.Figure("range", range.Dimension, suggested, Rounding.Inward) with { Word = SuggestedWord }
                : Detail.Of("range", range.Dimension, need?.Keep),
            Detail.Of("best", range.Dimension, need?.Best),
        ];
    }

    public IEnumerable<Reason> Judge(Tankmate one, Tankmate other)
    {
        var (need, others) = (one.Need(range), other.Need(range));
        if (need?.Keep is not { } here || others?.Keep is not { } there)
            return IsNeeded(range) ? [Unknown(need, others)] : [];
        if (here.Overlap(there) is not { } shared)
            return [new Reason(ReasonKind.WaterApart, Verdict.KeepApart, range.Field)];
        if (IsNarrow(shared))
            return [Of(ReasonKind.WaterNarrow, shared)];
        return IsNarrow((need.Best ?? here).Overlap(others.Best ?? there)) ? [Of(ReasonKind.BestApart, shared)] : [];
    }

    /// <summary>Relatives may speak against a pair; where they do not, it stays unknown.</summary>
    private Reason Unknown(WaterNeed? one, WaterNeed? other)
    {
        if ((one?.Keep ?? one?.Suggested) is not { } here || (other?.Keep ?? other?.Suggested) is not { } there)
            return Reason.Unknown(range.Field, one?.Keep is not null, other?.Keep is not null);
        return here.Overlap(there) is null
            ? new Reason(ReasonKind.RelativesApart, Verdict.KeepApart, range.Field)
            : new Reason(ReasonKind.RelativesOnly, Verdict.WithCare, range.Field);
    }

    private Reason Of(ReasonKind kind, Stretch shared) =>
        new(kind, Verdict.WithCare, range.Field, shared, range.Dimension);

    private bool IsNarrow(Stretch? shared) => NarrowUpTo(range) is var limit and > 0 &&
        (shared is not { } both || both.Width <= limit + Noise);
}
