namespace CareSheets.Species;

/// <summary>The figures that the schema declares and that relatives may be asked about.</summary>
/// <param name="Ranges">The care ranges, in the schema's order.</param>
/// <param name="Sizes">Sizes of fish and tank, by their path in the entry, such as <c>adult.length</c>.</param>
public sealed record FigureDeclarations(
    IReadOnlyList<CareRangeDeclaration> Ranges, IReadOnlyList<CareRangeDeclaration> Sizes);
