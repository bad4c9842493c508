using System.Globalization;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>Works as they are cited in text and listed at the end.</summary>
internal static class Citations
{
    /// <summary>Author and year: <c>Tyson R. Roberts 2007</c>.</summary>
    public static string Short(Reference work) =>
        $"{work.Author} {work.Year.ToString(CultureInfo.InvariantCulture)}";

    public static CitationLine Line(Reference work)
    {
        var where = string.Join(" ", new[] { work.Container, work.Pages }.OfType<string>());
        var text = $"{work.Author} ({work.Year.ToString(CultureInfo.InvariantCulture)}): {Stop(work.Title)}";
        return new CitationLine(
            "ref-" + work.Key.Value,
            where.Length == 0 ? text : $"{text} {Stop(where)}",
            work.Doi is { } doi ? "https://doi.org/" + doi : "",
            work.Note ?? "");
    }

    private static string Stop(string sentence) => sentence.EndsWith('.') ? sentence : sentence + ".";
}
