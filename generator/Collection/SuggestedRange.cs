using CareSheets.Species;

namespace CareSheets.Collection;

/// <summary>
/// Where relatives place a range that an entry does not state, in the canonical unit. It can speak against
/// something and never for it.
/// </summary>
public sealed record SuggestedRange(double Low, double High);

/// <summary>What relatives say of a range that an entry does not state; nothing where they can't tell.</summary>
public delegate SuggestedRange? AskRelatives(Entry entry, CareRangeDeclaration range);
