using System.Globalization;

namespace CareSheets.Paper.Layout;

/// <summary>A ruler under a drawing, in units of the animal, whatever the drawing's scale.</summary>
/// <param name="Unit">As it is written behind the last figure: cm or in.</param>
/// <param name="Millimetres">In one unit.</param>
/// <param name="Steps">Units between figures that people can count in.</param>
public sealed record Ruler(string Unit, double Millimetres, IReadOnlyList<int> Steps)
{
    public static Ruler Centimetres { get; } = new("cm", 10, [1, 2, 5, 10, 20, 50, 100]);

    public static Ruler Inches { get; } = new("in", 25.4, [1, 2, 3, 6, 12, 24, 36]);

    private const double Hair = 0.2;
    private const double ClosestTicks = 1.5;
    private const double ClosestFigures = 7;

    /// <param name="width">Of the paper, in mm.</param>
    /// <param name="smaller">How many times smaller than the animal the drawing is.</param>
    public Block Lay(double width, double smaller, CardType type)
    {
        var unit = Millimetres / smaller;
        var tick = Steps.FirstOrDefault(s => s * unit >= ClosestTicks, Steps[^1]);
        var figure = Steps.FirstOrDefault(s => s >= tick && s % tick == 0 && s * unit >= ClosestFigures, Steps[^1]);
        var last = (int)(width / unit / tick) * tick;
        var size = Points.ToMillimetres(type.Floor);
        var inks = new List<Ink> { new InkBox(0, 0, last * unit + Hair, Hair * 1.5) };
        for (var at = 0; at <= last; at += tick)
            inks.Add(new InkBox(at * unit, 0, Hair, at % figure == 0 ? size * 0.6 : size * 0.35));
        inks.AddRange(Figures(width, unit, figure, last, size));
        return new Block(size * (0.6 + Paragraph.Leading), inks);
    }

    /// <summary>
    /// Each in the middle under its tick, but within the paper; the unit stands behind the last, which
    /// pushes out those that it would touch.
    /// </summary>
    private IEnumerable<Ink> Figures(double width, double unit, int figure, int last, double size)
    {
        var end = Figure(last / figure * figure, $" {Unit}", width, unit, size);
        for (var at = 0; at < last / figure * figure; at += figure)
        {
            var one = Figure(at, "", width, unit, size);
            if (one.X + one.Width + (size * 0.4) <= end.X)
                yield return one;
        }
        yield return end;
    }

    private static InkText Figure(int at, string behind, double width, double unit, double size)
    {
        var digits = at.ToString(CultureInfo.InvariantCulture);
        var wide = FaceWidths.Of(digits + behind, Face.Plain, size);
        var middle = (at * unit) - (FaceWidths.Of(digits, Face.Plain, size) / 2);
        return new InkText(
            Math.Clamp(middle, 0, Math.Max(0, width - wide)), size * (0.6 + Paragraph.Ascent), size, Face.Plain,
            digits + behind);
    }
}
