using CareSheets.Diagnostics;
using CareSheets.Quantities;

namespace CareSheets.Species;

/// <summary>One range of one kind, as the writer stated it, with its evidence.</summary>
public sealed record KindedRange(RangeKind Kind, Sourced<StatedRange> Range, Evidence Evidence);

/// <summary>All that an entry says about one care range of the schema, such as its temperature.</summary>
public sealed record CareRange(CareRangeDeclaration Declaration, IReadOnlyList<KindedRange> Kinds)
{
    public KindedRange? Of(RangeKind kind) => Kinds.FirstOrDefault(k => k.Kind == kind);
}

/// <summary>A care property that is one of a few words, such as the flow.</summary>
public sealed record CareWord(CareWordDeclaration Declaration, Sourced<string> Word);
