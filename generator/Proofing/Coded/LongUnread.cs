using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>
/// An entry is read through again every two years, for names, laws and knowledge change. Only remarked: that
/// time goes by must not stop anybody's work.
/// </summary>
internal sealed class LongUnread(DateOnly today) : ICodedRule
{
    public static readonly CodedText Text = new(
        "entry-is-read-again-in-time", Severity.Note,
        "Nobody has read this entry through for two years", "Read it, correct it, and write today's date.",
        "Names, laws and knowledge change; two years are the shop's own habit", "common practice, no source");

    private const int Years = 2;

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry) =>
        entry.Reviewed < today && entry.Reviewed.AddYears(Years) < today
        ? [Text.Breach(
            entry, entry.Fields["reviewed"]?.Span ?? entry.Span, "reviewed",
            FormattableString.Invariant($"reviewed {entry.Reviewed:yyyy-MM-dd}"))]
        : [];
}
