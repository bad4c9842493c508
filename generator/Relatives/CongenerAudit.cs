using CareSheets.Collection;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Relatives;

/// <summary>A keep range that overlaps with that of no congener, with what those say.</summary>
public sealed record OutlyingRange(
    Entry Entry, CareRangeDeclaration Declaration, KindedRange Stated, IReadOnlyList<RelativeRange> Relatives);

/// <summary>What a relative's entry says of the same range.</summary>
public sealed record RelativeRange(Entry Entry, KindedRange Stated);

/// <summary>
/// The first, plain form of asking relatives: within a genus, a keep range that no other species of
/// it shares at all is either a true exception or a slip of the pen. Only figures with evidence of
/// their own are compared. The limit is common practice, no source.
/// </summary>
public static class CongenerAudit
{
    public static IReadOnlyList<OutlyingRange> Find(SpeciesCollection collection) =>
    [
        .. from entry in collection.Entries
           from range in entry.Ranges
           where range.Declaration.ComparedAmongRelatives
           let found = Outlying(collection, entry, range)
           where found is not null
           select found,
    ];

    private static OutlyingRange? Outlying(SpeciesCollection collection, Entry entry, CareRange range)
    {
        if (Own(range) is not { } stated)
            return null;
        var relatives = collection.Congeners(entry)
            .Select(other => (Entry: other, Stated: Own(other.Range(range.Declaration.Field))))
            .Where(other => other.Stated is not null)
            .Select(other => new RelativeRange(other.Entry, other.Stated!))
            .ToList();
        return relatives.Count > 0 && relatives.TrueForAll(r => !Overlap(stated.Range.Value, r.Stated.Range.Value))
            ? new OutlyingRange(entry, range.Declaration, stated, relatives)
            : null;
    }

    private static KindedRange? Own(CareRange? range) =>
        range?.Of(RangeKind.Keep) is { Evidence.IsOwn: true } keep ? keep : null;

    private static bool Overlap(StatedRange one, StatedRange other) =>
        !(one.High < other.Low) && !(other.High < one.Low);
}
