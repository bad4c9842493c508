using CareSheets.Names;
using CareSheets.Species;

namespace CareSheets.Renaming;

/// <summary>An entry that is to bear another scientific name. The old one stays as a former name for ever.</summary>
public sealed record NameMove(Entry Entry, ScientificName Name)
{
    public ScientificName OldName => Entry.ScientificName.Value;

    /// <summary>Author and year with the parentheses that the new genus asks for (ICZN Art. 51.3).</summary>
    public Authorship Authorship => Entry.Authorship.Value.For(Name, Entry.OriginalName.Value);

    /// <summary>All names it had, this one among them; the new one is former no more.</summary>
    public IReadOnlyList<ScientificName> FormerNames =>
    [
        .. Entry.FormerNames.Select(n => n.Value).Append(OldName).Where(n => n != Name).Distinct(),
    ];

    /// <summary>Whether it goes back to a name that it had before.</summary>
    public bool IsBack => Entry.FormerNames.Any(n => n.Value == Name);

    /// <summary>The ending that the new genus asks for, where the tables tell and it is another.</summary>
    public string? OtherEnding =>
        GenderEnding.For(Name.Genus, Name.Epithet, GenusTable.Known) is { } expected && expected != Name.Epithet
            ? expected
            : null;
}
