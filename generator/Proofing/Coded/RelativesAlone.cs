using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>An entry that somebody has reviewed rests on more than what relatives say.</summary>
internal sealed class RelativesAlone : ICodedRule
{
    public static readonly CodedText Text = new(
        "reviewed-entry-has-evidence-of-its-own", Severity.Warning,
        "It is called reviewed, and all that has no evidence of its own is still from relatives",
        "Check each figure, and write what it rests on: common practice, from memory, seen here or a work.",
        "Nobody has stated any of this for the species itself", "by definition");

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry) =>
        entry.Evidence.Kind == EvidenceKind.FromRelatives && entry.Fields["reviewed"] is { } reviewed
            ? [Text.Breach(entry, entry.Evidence.Span, "evidence", FormattableString.Invariant(
                $"reviewed {entry.Reviewed:yyyy-MM-dd}"), new RelatedSpan(reviewed.Span, "reviewed is here"))]
            : [];
}
