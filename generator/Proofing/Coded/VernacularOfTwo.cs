using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>The first vernacular name, which stands largest on card and page, is that of one species.</summary>
internal sealed class VernacularOfTwo(IReadOnlyList<Entry> entries) : ICodedRule
{
    public static readonly CodedText Text = new(
        "first-name-is-of-one-species", Severity.Warning,
        "Another species goes by the same first name", "Put a name first that tells them apart.",
        "Who buys by that name can't know which fish it is", "common practice, no source");

    private readonly ILookup<string, Entry> _byName =
        entries.ToLookup(e => e.VernacularName, StringComparer.OrdinalIgnoreCase);

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry) =>
        _byName[entry.VernacularName].FirstOrDefault(e => e.Name != entry.Name) is { } other
            ? [Text.Breach(entry, entry.VernacularNames[0].Span, "vernacularName",
                $"{entry.VernacularName} is also {other.ScientificName.Value}",
                new RelatedSpan(other.VernacularNames[0].Span, "the other is here"))]
            : [];
}
