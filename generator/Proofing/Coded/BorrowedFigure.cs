using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>A figure borrowed from a relative is still what the relative's entry says.</summary>
internal sealed class BorrowedFigure(SpeciesCollection collection) : ICodedRule
{
    public static readonly CodedText Text = new(
        "borrowed-figure-is-the-lenders", Severity.Warning,
        "A borrowed figure is not, or no more, what the lender says",
        "Borrow it again, or give it evidence of its own.",
        "A figure borrowed from an entry that has since changed is out of date", "by definition");

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry) =>
        from range in entry.Ranges
        from kind in range.Kinds
        where kind.Evidence.Kind == EvidenceKind.Like
        let lent = collection.Find(kind.Evidence.Key)?.Range(range.Declaration.Field)?.Of(kind.Kind)
        where lent is not null && !IsSame(lent.Range.Value, kind.Range.Value)
        select Text.Breach(entry, kind.Range.Span, $"care.{range.Declaration.Field}",
            $"{kind.Range.Value.Text} here, {lent.Range.Value.Text} there",
            new RelatedSpan(lent.Range.Span, $"{kind.Evidence.Key}: {lent.Range.Value.Text}"));

    /// <summary>Equal to a thousandth, for one may be written in another unit.</summary>
    private static bool IsSame(StatedRange one, StatedRange other) =>
        IsSame(one.Low, other.Low) && IsSame(one.High, other.High);

    private static bool IsSame(double? one, double? other) => one is { } a && other is { } b
        ? Math.Abs(a - b) <= 1e-3 * Math.Max(1, Math.Abs(a)) : one is null && other is null;
}
