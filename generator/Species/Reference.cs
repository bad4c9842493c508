using CareSheets.Diagnostics;

namespace CareSheets.Species;

/// <summary>A work that entries cite by its key.</summary>
public sealed record Reference(
    Sourced<string> Key,
    string Author,
    int Year,
    string Title,
    string? Container,
    string? Pages,
    string? Doi,
    string? Note);

/// <summary>A word of the trade, explained for customers.</summary>
public sealed record GlossaryTerm(
    Sourced<string> Key, string Term, string Meaning, IReadOnlyList<Sourced<string>> See);
