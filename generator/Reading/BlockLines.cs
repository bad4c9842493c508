using CareSheets.Diagnostics;

namespace CareSheets.Reading;

/// <summary>The lines of a text that stands below its <c>&gt;-</c> or <c>|</c>, farther in than that line.</summary>
internal static class BlockLines
{
    /// <summary>From the first sign of the first line to the end of the last; nothing where there is none.</summary>
    /// <param name="header">The line of the sign, as the file counts.</param>
    public static SourceSpan? Of(SourceFile file, int header)
    {
        var first = header + 1;
        while (file.Line(first) is { } blank && string.IsNullOrWhiteSpace(blank))
            first++;
        if (file.Line(first) is not { } line || Indent(line) <= Indent(file.Line(header) ?? ""))
            return null;
        var indent = Indent(line);
        var last = first;
        for (var next = first + 1; file.Line(next) is { } text; next++)
        {
            if (string.IsNullOrWhiteSpace(text))
                continue;
            if (Indent(text) < indent)
                break;
            last = next;
        }
        var end = new SourcePosition(last, file.Line(last)!.TrimEnd().Length + 1);
        return new SourceSpan(file.Path, new SourcePosition(first, indent + 1), end);
    }

    private static int Indent(string line) => line.Length - line.TrimStart(' ').Length;
}
