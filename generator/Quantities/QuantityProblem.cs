namespace CareSheets.Quantities;

/// <summary>Why a text is not a range, with the place of the offending part in that text.</summary>
/// <remarks>
/// The index counts UTF-16 characters from 0; a length of 0 marks a place where something is
/// missing. The values are what a message can say, by the names given at each kind.
/// </remarks>
public sealed record QuantityProblem(
    QuantityProblemKind Kind, int Index, int Length, IReadOnlyDictionary<string, string> Values);
