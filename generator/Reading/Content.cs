using CareSheets.Arrivals;
using CareSheets.Diagnostics;
using CareSheets.Rules;
using CareSheets.Regulations;
using CareSheets.Species;

namespace CareSheets.Reading;

/// <summary>
/// Everything read from a content folder, not yet linked. Entries that are not whole are
/// missing from <see cref="Entries"/> but known by name, so that links to them are not called broken
/// as well.
/// </summary>
public sealed record Content(
    Store? Store,
    IReadOnlyList<Entry> Entries,
    KnownNames Known,
    IReadOnlyList<Reference> References,
    IReadOnlyList<GlossaryTerm> Glossary,
    FigureDeclarations Figures,
    IReadOnlyDictionary<string, SourceFile> Files)
{
    /// <summary>Entries that lack something, for checks alone; their names are among the unread.</summary>
    public IReadOnlyList<Entry> Unfinished { get; init; } = [];

    /// <summary>The fish room's rules, hazards and demands.</summary>
    public Practice Practice { get; init; } = Practice.None;

    /// <summary>By file name.</summary>
    public IReadOnlyList<Arrival> Arrivals { get; init; } = [];

    public LawBook Law { get; init; } = LawBook.Empty;

    /// <summary>Nothing where the content has no families.yaml.</summary>
    public FamilyNotes? Families { get; init; }
}
