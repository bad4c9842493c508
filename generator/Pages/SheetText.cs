namespace CareSheets.Pages;

/// <summary>All that a home sheet prints, as far as it takes room.</summary>
/// <param name="Facts">Lists under a heading each.</param>
/// <param name="Advice">Facts of whole sentences, which are as wide as their column.</param>
/// <param name="Paragraphs">Of the prose, the first to stay and the last to go.</param>
/// <param name="Cautions">With the lines on safety.</param>
/// <param name="Foot">Lines across the whole sheet.</param>
internal sealed record SheetText(
    string Name,
    IReadOnlyList<RangeRow> Water,
    IReadOnlyList<IReadOnlyList<Fact>> Facts,
    IReadOnlyList<Fact> Advice,
    IReadOnlyList<string> Paragraphs,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Foot);
