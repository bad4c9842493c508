using CareSheets.Diagnostics;
using CareSheets.Quantities;

namespace CareSheets.Species;

/// <summary>What a writer put into one field.</summary>
/// <param name="Span">Where it stands.</param>
public abstract record FieldValue(SourceSpan Span);

/// <summary>A figure or a range of figures with their unit.</summary>
public sealed record FieldFigure(Sourced<StatedRange> Stated) : FieldValue(Stated.Span);

/// <summary>A whole number, such as a count of fish.</summary>
public sealed record FieldCount(Sourced<int> Number) : FieldValue(Number.Span);

/// <summary>One word or text, or a list of them.</summary>
public sealed record FieldWords(IReadOnlyList<Sourced<string>> Words, SourceSpan Span) : FieldValue(Span);
