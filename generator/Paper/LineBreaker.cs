using System.Buffers;
using System.Text;

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
    public static IReadOnlyList<string> Break(string text, Face face, double size, double width)
    {
        var lines = new List<string>();
        var line = "";
        var units = 0.0; // of the line, so that it is not measured again with every piece
        foreach (var piece in Pieces(text).SelectMany(p => Fitting(p, face, size, width)))
        {
            if (line.Length > 0 && With(line, units, piece, face, size) > width)
            {
                lines.Add(line.TrimEnd());
                line = piece.TrimStart();
                units = FaceWidths.Units(line, face);
                continue;
            }
            line += piece;
            units = FaceWidths.Units(piece, face, units);
        }
        lines.Add(line.TrimEnd());
        return lines;
    }

    /// <summary>The width of a line with the piece behind it, spaces at its end left out.</summary>
    private static double With(string line, double units, string piece, Face face, double size)
    {
        var seen = piece.AsSpan().TrimEnd();
        return seen.IsEmpty
            ? FaceWidths.Of(line.AsSpan().TrimEnd(), face, size)
            : FaceWidths.Sized(FaceWidths.Units(seen, face, units), size);
    }

    /// <summary>Whether every piece of the text stays whole in lines of this width.</summary>
    public static bool KeepsWhole(string text, Face face, double size, double width) =>
        Pieces(text).All(p => FaceWidths.Of(p.AsSpan().TrimEnd(), face, size) <= width);

    /// <summary>Each with the space behind it.</summary>
    private static IEnumerable<string> Pieces(string text)
    {
        var start = 0;
        for (var i = 0; i < text.Length; i++)
        {
            if (!Ends(text, i))
                continue;
            yield return text[start..(i + 1)];
            start = i + 1;
        }
        if (start < text.Length)
            yield return text[start..];
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

    private static IEnumerable<string> Fitting(string piece, Face face, double size, double width)
    {
        if (FaceWidths.Of(piece.AsSpan().TrimEnd(), face, size) <= width)
            return [piece];
        var parts = new List<string>();
        var part = new StringBuilder();
        foreach (var rune in piece.EnumerateRunes())
        {
            if (part.Length > 0 && FaceWidths.Of($"{part}{rune}".TrimEnd(), face, size) > width)
            {
                parts.Add(part.ToString());
                part.Clear();
            }
            part.Append(rune);
        }
        return [.. parts, part.ToString()];
    }
}
