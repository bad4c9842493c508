using CareSheets.Diagnostics;

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
    /// Whether a finding is of one of these entries: told in its file, or at another's with a place in its file. The
    /// relatives beside an odd figure are only compared with it.
    /// </summary>
    public static bool Concerns(Diagnostic found, IReadOnlyList<string> names)
    {
        IEnumerable<SourceSpan> spans = RelativesCodes.All.Contains(found.Code)
            ? [found.Span] : found.Related.Select(r => r.Span).Prepend(found.Span);
        return names.Any(n => spans.Any(s => s.File.EndsWith($"/{FileOf(n)}", StringComparison.Ordinal)));
    }
}
