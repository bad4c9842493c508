namespace CareSheets.Diagnostics;

/// <summary>
/// A text file of the content as read: its path relative to where the program runs, with
/// forward slashes, and its text with every line end as <c>\n</c>.
/// </summary>
public sealed class SourceFile
{
    private readonly string[] _lines;

    public SourceFile(string path, string text)
    {
        Path = path;
        Text = text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
        _lines = Text.Split('\n');
    }

    public string Path { get; }

    public string Text { get; }

    /// <summary>The text of a line counted from 1, or nothing when the file has no such line.</summary>
    public string? Line(int number) =>
        number >= 1 && number <= _lines.Length ? _lines[number - 1] : null;

    public SourceSpan Span(int line, int column, int length = 1) =>
        new(Path, new SourcePosition(line, column), new SourcePosition(line, column + length));

    public SourceSpan Whole => SourceSpan.WholeFile(Path);
}
