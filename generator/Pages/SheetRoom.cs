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
    private const double Body = 9;
    private const double Small = 9;
    private const double Leading = 1.225;
    private const double ColumnGap = 5;
    private const int ColumnCount = 3;
    private const double Code = 23;
    private const double Labels = 22.5;

    /// <summary>Left free on the right, in mm: Chromium cuts a page's content at a whole pixel.</summary>
    private const double Edge = 0.4;

    /// <summary>Lines of plain type that may hold a bold address.</summary>
    private const double Bolder = 0.985;

    /// <summary>What Chromium may round up on a whole page, in mm.</summary>
    private const double Play = 1.5;

    private static readonly double Line = Points.ToMillimetres(Body) * Leading;

    /// <summary>Lines counted so far: a sheet is measured again for each paragraph that gives way.</summary>
    private readonly Dictionary<(string Text, Face Face, double Points, double Width), int> _counted = [];

    /// <summary>Between the margins, in mm.</summary>
    public double Page => paper.Width - (2 * margin);

    private double Width => Page - Edge;

    private double Column => (Width - (ColumnGap * (ColumnCount - 1))) / ColumnCount;

    /// <param name="paper">A4 or Letter, as the shop names it.</param>
    public static SheetRoom Of(string paper) => paper.Equals("letter", StringComparison.OrdinalIgnoreCase)
        ? new SheetRoom(PaperSize.Letter, 9) : new SheetRoom(PaperSize.A4, 10);

    public bool Holds(SheetText sheet) => Height(sheet) <= paper.Height - (2 * margin);

    /// <summary>In mm, of all that is printed.</summary>
    public double Height(SheetText sheet) =>
        Head(sheet) + Water(sheet.Water) + SheetColumns.Height([.. Pieces(sheet)], ColumnCount, Line) +
        Foot(sheet.Foot) + Play;

    private double Head(SheetText sheet)
    {
        var name = Lines(sheet.Name, Face.Bold, 22, Width - Code) * Points.ToMillimetres(22) * 1.05;
        return Line + 1.5 + Math.Max(Code, 1 + name + (Points.ToMillimetres(14) * Leading) + Line);
    }

    private double Water(IReadOnlyList<RangeRow> rows)
    {
        const double least = 9.5 * 16 * 25.4 / 96;
        var across = Math.Clamp((int)((Width + 5) / (least + 5)), 1, Math.Max(1, rows.Count));
        var cell = (Width - (5 * (across - 1))) / across;
        return Heading + 1 + rows.Chunk(across).Sum(line => line.Max(row => Range(row, cell)) + 2);
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

    private const double BlockEnd = 1.5;

    private static double SmallLine => Points.ToMillimetres(Small) * Leading;

    private static double Heading => 1.8 + (Points.ToMillimetres(11) * 1.2);

    /// <summary>What the columns may not part, in order; a heading goes with what it heads.</summary>
    private IEnumerable<double> Pieces(SheetText sheet)
    {
        foreach (var facts in sheet.Facts.Where(f => f.Count > 0))
        {
            for (var i = 0; i < facts.Count; i++)
                yield return (i == 0 ? Heading : 0) + FactHeight(facts[i]);
            yield return BlockEnd;
        }
        foreach (var piece in Advice(sheet.Advice).Concat(Prose(sheet.Paragraphs)))
            yield return piece;
        for (var i = 0; i < sheet.Cautions.Count; i++)
            yield return (i == 0 ? Heading : 0) + 0.4 +
                (Line * Lines(sheet.Cautions[i], CautionFace(sheet, i), Body, Column - 4.5));
        yield return BlockEnd;
    }

    private double FactHeight(Fact fact) => 0.5 + (Line * Math.Max(
        Lines(fact.Label, Face.Plain, Small, Labels - 1.5), Lines(Whole(fact), Face.Plain, Body, Column - Labels)));

    /// <summary>A label and its sentences in lines as wide as the column.</summary>
    private IEnumerable<double> Advice(IReadOnlyList<Fact> facts)
    {
        for (var i = 0; i < facts.Count; i++)
        {
            var lines = Lines($"{facts[i].Label}   {Whole(facts[i])}", Face.Plain, Body, Column);
            for (var line = 0; line < lines; line++)
                yield return Line + (line > 0 ? 0 : i == 0 ? 0.5 + Heading : 0.5);
        }
        if (facts.Count > 0)
            yield return BlockEnd;
    }

    /// <summary>The last are the lines on safety, which are bold.</summary>
    private static Face CautionFace(SheetText sheet, int at) =>
        at == sheet.Cautions.Count - 1 ? Face.Bold : Face.Plain;

    private IEnumerable<double> Prose(IReadOnlyList<string> paragraphs)
    {
        for (var i = 0; i < paragraphs.Count; i++)
        {
            var lines = paragraphs[i].Split('\n').Sum(l => Lines(l, Face.Plain, Body, Column));
            for (var line = 0; line < lines; line++)
                yield return Line + (i == 0 && line == 0 ? Heading : 0);
            yield return 1.25;
        }
        if (paragraphs.Count > 0)
            yield return BlockEnd;
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
