using CareSheets.Arrivals;
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
}
