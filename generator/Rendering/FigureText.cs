using System.Text.RegularExpressions;

namespace CareSheets.Rendering;

/// <summary>
/// Figures within a sentence that must not be torn at a line's end: a range from its other end, a figure
/// from its unit. Each stands in an element of its own, which the style sheet keeps in one piece; the text
/// itself stays as it is, so that it can be found and copied.
/// </summary>
internal static partial class FigureText
{
    /// <param name="escaped">Text that has been escaped already.</param>
    public static string Keep(string escaped) =>
        Figure().Replace(escaped, match => $"<span data-figure>{match.Value}</span>");

    [GeneratedRegex(
        @"\d[\d.,]*(?:–\d[\d.,]*)?\u0020" +
        @"(?:°(?:C|F|dH|dKH)|cm|mm|in|L|US\u0020gal|g/L|mg/L|µS/cm|ppm\u0020CaCO₃)(?![\w/])" +
        @"|\d[\d.]*–\d[\d.]*\d|\d–\d")]
    private static partial Regex Figure();
}
