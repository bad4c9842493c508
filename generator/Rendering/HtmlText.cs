using CareSheets.Names;

namespace CareSheets.Rendering;

/// <summary>
/// Text as it may stand in an element or in a quoted attribute. Only the five signs that mean
/// something there are written otherwise; letters and degree signs stay readable in the file.
/// </summary>
internal static class HtmlText
{
    public static string Escape(string text) => text.AsSpan().ContainsAny("&<>\"'")
        ? text.Replace("&", "&amp;", StringComparison.Ordinal)
            .Replace("<", "&lt;", StringComparison.Ordinal)
            .Replace(">", "&gt;", StringComparison.Ordinal)
            .Replace("\"", "&quot;", StringComparison.Ordinal)
            .Replace("'", "&#39;", StringComparison.Ordinal)
        : text;

    /// <summary>Text for an element, never for an attribute: scientific names and figures become elements.</summary>
    public static string Mark(string text) => string.Concat(LatinRuns.Of(text)
        .Select(run => run.IsLatin ? $"<i lang=\"la\">{Escape(run.Text)}</i>" : FigureText.Keep(Escape(run.Text))));
}
