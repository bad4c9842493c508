namespace CareSheets.Paper.Layout;

/// <summary>Text in lines of a given width.</summary>
internal static class Paragraph
{
    /// <summary>From base line to base line, in ems.</summary>
    public const double Leading = 1.18;

    /// <summary>
    /// From the top of a line to its base line, in ems: the face's ascent of 0.905 with its share of
    /// the leading over ascent and descent of 1.117.
    /// </summary>
    public const double Ascent = 0.905 + ((Leading - 1.117) / 2);

    /// <param name="points">Size of the type in points.</param>
    public static Block Lay(string text, Face face, double points, double width) =>
        text.Length == 0 ? Block.Empty
        : Lines(LineBreaker.Break(text, face, Points.ToMillimetres(points), width), face, points);

    public static Block Lines(IReadOnlyList<string> lines, Face face, double points)
    {
        var size = Points.ToMillimetres(points);
        return new Block(lines.Count * Leading * size, [.. lines.Select((line, i) =>
            new InkText(0, (Ascent + (i * Leading)) * size, size, face, line))]);
    }

    /// <summary>A text in several faces of one size.</summary>
    public static Block Lay(IReadOnlyList<TypeRun> runs, double points, double width)
    {
        var size = Points.ToMillimetres(points);
        var lines = LineBreaker.Break(runs, size, width);
        return new Block(lines.Count * Leading * size, [.. lines.SelectMany((line, i) =>
            Line(line, size).Select(ink => ink.Move(0, (Ascent + (i * Leading)) * size)))]);
    }

    /// <summary>Runs side by side on a base line, without the spaces between them, which a drawing collapses.</summary>
    private static IEnumerable<Ink> Line(IReadOnlyList<TypeRun> line, double size)
    {
        var x = 0.0;
        foreach (var run in line)
        {
            var before = run.Text.Length - run.Text.TrimStart().Length;
            var seen = run.Text.Trim();
            if (seen.Length > 0)
                yield return new InkText(
                    x + FaceWidths.Of(run.Text.AsSpan(0, before), run.Face, size), 0, size, run.Face, seen);
            x += FaceWidths.Of(run.Text, run.Face, size);
        }
    }

    /// <summary>As many lines as the height takes, at least one; what is cut off shows as three points.</summary>
    public static Block Cut(string text, Face face, double points, double width, double most)
    {
        var size = Points.ToMillimetres(points);
        var lines = LineBreaker.Break(text, face, size, width);
        var kept = lines.Take(Math.Max(1, (int)(most / (size * Leading) + 1e-9))).ToList();
        if (kept.Count == lines.Count)
            return Lines(lines, face, points);
        while (kept[^1].Length > 0 && FaceWidths.Of(kept[^1] + "…", face, size) > width)
            kept[^1] = kept[^1][..^1];
        kept[^1] += "…";
        return Lines(kept, face, points);
    }
}
