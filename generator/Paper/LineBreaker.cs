using System.Buffers;

namespace CareSheets.Paper;

/// <summary>Breaks a text into lines that are no wider than given.</summary>
public static class LineBreaker
{
    /// <summary>In signs: that of mg/L, and of °dKH.</summary>
    private const int LongestUnit = 4;

    private static readonly SearchValues<char> AfterUnit = SearchValues.Create(" ,.;:)");

    /// <summary>
    /// Lines break at spaces, and behind hyphens and slashes between words; a figure stays with its
    /// unit. A piece wider than a line breaks between letters. Never empty; no line is wider than
    /// given unless a single letter is.
    /// </summary>
    public static IReadOnlyList<string> Break(string text, Face face, double size, double width) =>
        [.. Lines(new MeasuredText([new TypeRun(text, face)]), size, width).Select(l => text[l.From..l.To])];

    /// <summary>The same of a text in several faces.</summary>
    public static IReadOnlyList<IReadOnlyList<TypeRun>> Break(IReadOnlyList<TypeRun> runs, double size, double width)
    {
        var text = new MeasuredText(runs);
        return [.. Lines(text, size, width).Select(l => text.Runs(l.From, l.To))];
    }

    /// <summary>Whether every piece of the text stays whole in lines of this width.</summary>
    public static bool KeepsWhole(string text, Face face, double size, double width)
    {
        var measured = new MeasuredText([new TypeRun(text, face)]);
        return Pieces(text).All(p => measured.Width(p.From, p.To, size) <= width);
    }

    private static List<(int From, int To)> Lines(MeasuredText text, double size, double width)
    {
        var lines = new List<(int From, int To)>();
        var (start, end) = (0, 0);
        foreach (var (from, to) in Pieces(text.Text).SelectMany(p => Fitting(text, p, size, width)))
        {
            if (end > start && text.Width(start, to, size) > width)
            {
                lines.Add((start, text.TrimEnd(start, end)));
                start = text.TrimStart(from, to);
            }
            end = to;
        }
        lines.Add((start, text.TrimEnd(start, end)));
        return lines;
    }

    /// <summary>Each with the space behind it.</summary>
    private static IEnumerable<(int From, int To)> Pieces(string text)
    {
        var start = 0;
        for (var i = 0; i < text.Length; i++)
        {
            if (!Ends(text, i))
                continue;
            yield return (start, i + 1);
            start = i + 1;
        }
        if (start < text.Length)
            yield return (start, text.Length);
    }

    private static bool Ends(string text, int at) => text[at] switch
    {
        ' ' => at == 0 || !char.IsAsciiDigit(text[at - 1]) || !IsUnit(text.AsSpan(at + 1)),
        '-' => IsLetter(text, at - 1) && IsLetter(text, at + 1),
        // A slash between single letters is part of a unit: g/L.
        '/' => IsLetter(text, at - 1) && IsLetter(text, at - 2) && IsLetter(text, at + 1) && IsLetter(text, at + 2),
        _ => false,
    };

    /// <summary>A degree sign, a percent sign, or no more letters than a unit has: cm, mg/L, ppm.</summary>
    private static bool IsUnit(ReadOnlySpan<char> rest)
    {
        var end = rest.IndexOfAny(AfterUnit);
        var word = end < 0 ? rest : rest[..end];
        return word.Length is > 0 and <= LongestUnit && (word[0] is '°' or '%' || char.IsLetter(word[0]));
    }

    private static bool IsLetter(string text, int at) =>
        at >= 0 && at < text.Length && char.IsLetter(text[at]);

    private static IEnumerable<(int From, int To)> Fitting(
        MeasuredText text, (int From, int To) piece, double size, double width)
    {
        if (text.Width(piece.From, piece.To, size) <= width)
            return [piece];
        var parts = new List<(int From, int To)>();
        var (start, at) = (piece.From, piece.From);
        while (at < piece.To)
        {
            var next = at + (char.IsHighSurrogate(text.Text[at]) && at + 1 < piece.To ? 2 : 1);
            if (at > start && text.Width(start, next, size) > width)
            {
                parts.Add((start, at));
                start = at;
            }
            at = next;
        }
        return [.. parts, (start, piece.To)];
    }
}
