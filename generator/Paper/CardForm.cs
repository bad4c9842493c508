namespace CareSheets.Paper;

/// <summary>How a shop wants its cards: their size, and the sheet that several are printed on.</summary>
/// <param name="Sheet">Nothing when each card has a page of its own size.</param>
public sealed record CardForm(PaperSize Size, PaperSize? Sheet);
