namespace CareSheets.Tests.Browser;

/// <summary>
/// A paper that a printer takes, with the margin that the theme leaves, in millimetres. A4 and A6 are
/// those of ISO 216; Letter is 8.5 by 11 inches.
/// </summary>
internal sealed record PrinterPaper(string Name, double Width, double Height, double Margin);
