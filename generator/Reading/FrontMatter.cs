using CareSheets.Diagnostics;

namespace CareSheets.Reading;

/// <summary>
/// An entry split at its fences. <see cref="FirstLine"/> is the line of the file that the YAML
/// begins on, so that every position in it can be told as a position in the file.
/// </summary>
internal sealed record FrontMatter(string Yaml, int FirstLine, string Prose, int ProseLine)
{
    public const string Fence = "---";

    /// <summary>
    /// Splits at the first line that is exactly three hyphens after the opening one; an indented
    /// one is data. Nothing when either fence is missing.
    /// </summary>
    public static FrontMatter? Split(SourceFile file, DiagnosticBag bag)
    {
        var lines = file.Text.Split('\n');
        if (lines[0].TrimEnd() != Fence)
        {
            bag.Add(ReadingCodes.NoFrontMatter, file.Span(1, 1));
            return null;
        }
        var end = Array.FindIndex(lines, 1, line => line.TrimEnd() == Fence);
        if (end < 0)
        {
            bag.Add(ReadingCodes.NoClosingFence, file.Span(1, 1, Fence.Length));
            return null;
        }
        var prose = string.Join('\n', lines[(end + 1)..]);
        if (string.IsNullOrWhiteSpace(prose))
            bag.Add(ReadingCodes.NoProse, file.Span(end + 1, 1, Fence.Length));
        return new FrontMatter(string.Join('\n', lines[1..end]), 2, prose, end + 2);
    }
}
