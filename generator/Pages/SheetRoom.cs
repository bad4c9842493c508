using CareSheets.Paper;

namespace CareSheets.Pages;

/// <summary>
/// How much of a page a home sheet takes, told before any browser has seen it: lines are counted with
/// measured type, and the measures of home-sheet.css stand here again. Always a little more than Chromium
/// takes; the tests print every sheet.
/// </summary>
/// <param name="paper">What it is printed on.</param>
/// <param name="margin">That the page leaves on all sides, in mm.</param>
internal sealed class SheetRoom(PaperSize paper, double margin)
{
    private const double Body = 9.25;
    private const double Small = 9;
    private const double Leading = 1.28;
    private const double ColumnGap = 6;
    private const double Code = 23;
    private const double Labels = 30;

    /// <summary>Lines of plain type that may hold a bold address.</summary>
    private const double Bolder = 0.985;

    /// <summary>What Chromium may round up on a whole page, in mm.</summary>
    private const double Play = 1.5;

    private static readonly double Line = Points.ToMillimetres(Body) * Leading;

    /// <summary>Lines counted so far: a sheet is measured again for each paragraph that gives way.</summary>
    private readonly Dictionary<(string Text, Face Face, double Points, double Width), int> _counted = [];

    /// <summary>Between the margins, in mm.</summary>
    public double Width => paper.Width - (2 * margin);

    private double Column => (Width - ColumnGap) / 2;

    /// <param name="paper">A4 or Letter, as the shop names it.</param>
    public static SheetRoom Of(string paper) => paper.Equals("letter", StringComparison.OrdinalIgnoreCase)
        ? new SheetRoom(PaperSize.Letter, 10) : new SheetRoom(PaperSize.A4, 12);

    public bool Holds(SheetText sheet) => Height(sheet) <= paper.Height - (2 * margin);

    /// <summary>In mm, of all that is printed.</summary>
    public double Height(SheetText sheet) =>
        Head(sheet) + Water(sheet.Water) + Columns([.. Pieces(sheet)]) + Foot(sheet.Foot) + Play;

    private double Head(SheetText sheet)
    {
        var name = Lines(sheet.Name, Face.Bold, 25, Width - Code) * Points.ToMillimetres(25) * 1.05;
        return Line + 1.5 + Math.Max(Code, 2.5 + name + (Points.ToMillimetres(14) * Leading) + Line);
    }

    private double Water(IReadOnlyList<RangeRow> rows)
    {
        const double least = 9.5 * 16 * 25.4 / 96;
        var across = Math.Clamp((int)((Width + 5) / (least + 5)), 1, Math.Max(1, rows.Count));
        var cell = (Width - (5 * (across - 1))) / across;
        return Heading + 3 + rows.Chunk(across).Sum(line => line.Max(row => Range(row, cell)) + 2);
    }

    /// <summary>Label, figures, the bar with its ends, the words under it.</summary>
    private double Range(RangeRow row, double cell)
    {
        var figures = FaceWidths.Of(row.First, Face.Bold, Points.ToMillimetres(13)) +
            FaceWidths.Of("  " + row.Second, Face.Plain, Points.ToMillimetres(Body));
        var kinds = string.Join(" · ", row.OtherKinds.Select(k => $"{k.Kind} {k.First}"));
        return Line + (Math.Ceiling(figures / cell) * Points.ToMillimetres(13) * Leading) +
            (row.Bar is null ? 0 : 5.3 + SmallLine) +
            (SmallLine * (Count(row.Brief, cell) + Count(kinds, cell)));

        int Count(string text, double width) =>
            text.Length == 0 ? 0 : Lines(text, Face.Plain, Small, width);
    }

    private static double SmallLine => Points.ToMillimetres(Small) * Leading;

    private static double Heading => 1.8 + (Points.ToMillimetres(11) * 1.2);

    /// <summary>What the columns may not part, from the top of the first to the end of the second.</summary>
    private IEnumerable<double> Pieces(SheetText sheet)
    {
        foreach (var facts in sheet.Facts.Where(f => f.Count > 0))
        {
            yield return Heading;
            foreach (var fact in facts)
                yield return 0.8 + (Line * Math.Max(
                    Lines(fact.Label, Face.Plain, Small, Labels - 2),
                    Lines(Whole(fact), Face.Plain, Body, Column - Labels)));
            yield return 2.5;
        }
        foreach (var piece in Prose(sheet.Paragraphs))
            yield return piece;
        yield return Heading;
        foreach (var caution in sheet.Cautions)
            yield return 0.75 + (Line * Lines(caution, Face.Plain, Body, Column - 4.5));
        yield return 2.5;
    }

    private IEnumerable<double> Prose(IReadOnlyList<string> paragraphs)
    {
        if (paragraphs.Count == 0)
            yield break;
        yield return Heading;
        foreach (var paragraph in paragraphs)
        {
            var lines = paragraph.Split('\n').Sum(l => Lines(l, Face.Plain, Body, Column));
            for (var line = 0; line < lines; line++)
                yield return Line;
            yield return 1.25;
        }
        yield return 2.5;
    }

    /// <summary>The least height at which two columns hold all pieces in their order.</summary>
    private static double Columns(IReadOnlyList<double> pieces)
    {
        var (first, rest) = (0.0, pieces.Sum());
        var least = rest;
        foreach (var piece in pieces)
        {
            (first, rest) = (first + piece, rest - piece);
            least = Math.Min(least, Math.Max(first, rest));
        }
        return least + (Line / 2); // a line that may not stand alone goes with the next
    }

    private double Foot(IReadOnlyList<string> foot) =>
        2.8 + foot.Sum(line => SmallLine * Lines(line, Face.Plain, Small, Width * Bolder));

    private static string Whole(Fact fact) => fact.Note.Length == 0 ? fact.Value : $"{fact.Value} · {fact.Note}";

    private int Lines(string text, Face face, double points, double width)
    {
        if (!_counted.TryGetValue((text, face, points, width), out var lines))
            _counted[(text, face, points, width)] = lines =
                LineBreaker.Break(text, face, Points.ToMillimetres(points), width).Count;
        return lines;
    }
}
