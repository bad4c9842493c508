namespace CareSheets.Tests.Browser;

/// <summary>A paper that a printer takes, with the margin that the theme leaves, in millimetres (ISO 216; ANSI A).</summary>
internal sealed record PaperSize(string Name, double Width, double Height, double Margin);
