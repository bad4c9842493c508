using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Proofing;

/// <summary>What a rule has against an entry.</summary>
/// <param name="Rule">The rule's name, which a waiver of the entry may give.</param>
public sealed record Breach(string Rule, Entry Entry, Diagnostic Diagnostic);
