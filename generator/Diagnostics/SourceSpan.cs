namespace CareSheets.Diagnostics;

/// <summary>
/// A stretch of one file, from <see cref="Start"/> up to but not including <see cref="End"/>.
/// <see cref="None"/> is "no place at all", which is not the same as the first character.
/// </summary>
public sealed record SourceSpan(string File, SourcePosition Start, SourcePosition End)
{
    public static readonly SourceSpan None = new("", default, default);

    public bool IsNone => File.Length == 0;

    /// <summary>A whole file, where no line of it is to blame.</summary>
    public static SourceSpan WholeFile(string file) =>
        new(file, SourcePosition.Start, SourcePosition.Start);

    /// <summary>Part of a value that stands in one line, by index within the value.</summary>
    public SourceSpan Part(int index, int length)
    {
        var start = Start.Right(index);
        return this with { Start = start, End = start.Right(Math.Max(length, 1)) };
    }
}
