using CareSheets.Arrivals;
using CareSheets.Names;
using CareSheets.Names.Matching;

namespace CareSheets.PackingLists;

/// <summary>A line with the species that it was taken for.</summary>
/// <param name="Entry">Nothing while a person has to say.</param>
/// <param name="Taken">Why it was taken; nothing with <paramref name="Entry"/>.</param>
public sealed record MatchedLine(PackedLine Line, string? Entry, NameTaken? Taken, NameMatch Match)
{
    /// <summary>What lists of law say of it or of what it may be, each in a sentence.</summary>
    public IReadOnlyList<string> Law { get; init; } = [];

    /// <summary>Entries that it may be, the likeliest first.</summary>
    public IReadOnlyList<MatchCandidate> Perhaps => Entry is null ? Match.Others : [];

    /// <summary>Those of them that help a person to decide, and those that a law names, however unlikely.</summary>
    public IEnumerable<MatchCandidate> Likely =>
        Perhaps.Where(c => c.Sureness >= LeastSureness || Watched.Contains(c.Species.Key));

    /// <summary>Entries that it may be and that a list of law names.</summary>
    public IReadOnlySet<string> Watched { get; init; } = new HashSet<string>();

    /// <summary>The species that it names in full and that has no entry; nothing where it names none.</summary>
    public ScientificName? NewName { get; init; }

    /// <summary>No guess below it was right in the lists of SupplierListsTests, by which it was chosen.</summary>
    public const double LeastSureness = 0.42;
}
