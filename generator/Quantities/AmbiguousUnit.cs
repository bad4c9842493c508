namespace CareSheets.Quantities;

/// <summary>
/// Spellings that look like a unit but mean more than one thing, with the units that would say it
/// plainly, the likeliest first.
/// </summary>
public sealed record AmbiguousUnit(
    AmbiguityReason Reason, IReadOnlyList<string> Spellings, IReadOnlyList<Unit> Choices);
