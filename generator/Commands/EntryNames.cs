using CareSheets.Diagnostics;
using CareSheets.Relatives;

namespace CareSheets.Commands;

/// <summary>Entries as people name them on the command line: by file, by file name or by scientific name.</summary>
internal static class EntryNames
{
    public static string Slug(string name)
    {
        var last = name.Replace('\\', '/').Split('/')[^1];
        return Names.Slug.From(last.EndsWith(".md", StringComparison.Ordinal) ? last[..^3] : last);
    }

    public static string FileOf(string name) => Slug(name) + ".md";

    /// <summary>The first name for which there is no file, or nothing.</summary>
    public static string? Unknown(IEnumerable<string> names, string content) =>
        names.FirstOrDefault(n => !File.Exists(Path.Combine(content, "species", FileOf(n))));

    /// <summary>
    /// Whether a finding is of one of these entries: told in its file, or at another's with a place in its file.
    /// </summary>
    public static bool Concerns(Diagnostic found, IReadOnlyList<string> names) =>
        names.Any(n => IsOf(n, found.Span) || (HasParties(found) && found.Related.Any(r => IsOf(n, r.Span))));

    private static bool IsOf(string name, SourceSpan span) =>
        span.File.EndsWith($"/{FileOf(name)}", StringComparison.Ordinal);

    /// <summary>
    /// Relatives beside an odd value are only compared with it, unless they are so few that any may be the odd one.
    /// </summary>
    private static bool HasParties(Diagnostic found) => !RelativesCodes.All.Contains(found.Code) ||
        ((found.Code == RelativesCodes.Apart || found.Code == RelativesCodes.ApartBySlip) &&
            found.Related.Count(r => r.Span.File != found.Span.File) <= FewRelatives.Most);
}
