using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Relatives;

/// <summary>A stated value that does not fit what relatives say.</summary>
/// <param name="IsSure">
/// Whether it is flagged with the false discovery rate kept; else it only stands out, which may be chance.
/// </param>
/// <param name="Z">How many standard deviations its middle lies from what relatives foretell.</param>
/// <param name="Expected">The middle that they foretell, in the canonical unit.</param>
/// <param name="ExpectedLow">Lower end of the stretch that holds the middle in 95 of 100 cases.</param>
/// <param name="Slip">What may have happened, where something fits.</param>
/// <param name="Accepted">The writer's word that it is right, where it is given for this very value.</param>
public sealed record Outlier(
    Entry Entry,
    ComparedFigure Figure,
    Sourced<StatedRange> Stated,
    bool IsSure,
    double Z,
    double Expected,
    double ExpectedLow,
    double ExpectedHigh,
    Relations Relations,
    LikelySlip? Slip,
    Acceptance? Accepted)
{
    /// <summary>Another figure of the entry without which this one would fit: either may be the wrong one.</summary>
    public BesideFigure? Beside { get; init; }

    /// <summary>The middle of the stated range in the canonical unit; on a scale of logarithms the geometric.</summary>
    public required double Middle { get; init; }

    /// <summary>
    /// Whether the middle lies where relatives expect 95 of 100: an accepted value is told of for longer than
    /// others.
    /// </summary>
    public bool IsMild => Middle >= ExpectedLow && Middle <= ExpectedHigh;
}

/// <summary>A figure that the entry states beside an odd one.</summary>
public sealed record BesideFigure(ComparedFigure Figure, Sourced<StatedRange> Stated);

/// <summary>The relatives that were asked, nearest rank first.</summary>
/// <param name="Rank">The nearest rank at which there are any with a value: genus, family, order, or none.</param>
public sealed record Relations(Collection.TaxonRank? Rank, IReadOnlyList<Relation> Nearest, int Asked);

/// <summary>A relative with what it states.</summary>
public sealed record Relation(Entry Entry, Sourced<StatedRange> Stated);
