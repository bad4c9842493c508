using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>
/// No entry was reviewed on a day that has not come yet. A clock that is behind most entries is not believed: then
/// nothing is said.
/// </summary>
internal sealed class ReadAhead(IReadOnlyList<Entry> entries, DateOnly today) : ICodedRule
{
    public static readonly CodedText Text = new(
        "reviewed-is-not-to-come", Severity.Warning,
        "The day on which this entry was reviewed has not come yet", "Write the day on which somebody read it.",
        "Two years are counted from that day until the entry is to be read again", "by definition");

    private readonly bool _clockIsRight = entries.Count(e => e.Reviewed > today) * 2 <= entries.Count;

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry) =>
        _clockIsRight && entry.Reviewed > today && entry.Reviewed != DateOnly.MaxValue // which stands in for none
        ? [Text.Breach(entry, entry.Fields["reviewed"]?.Span ?? entry.Span, "reviewed", FormattableString.Invariant(
            $"reviewed {entry.Reviewed:yyyy-MM-dd}, and today is {today:yyyy-MM-dd}"))]
        : [];
}
