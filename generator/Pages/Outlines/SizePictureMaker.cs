using System.Globalization;
using CareSheets.Paper.Layout;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Pages.Outlines;

/// <summary>Draws a grown fish over the shortest of a few rulers, so that pages can be compared at a glance.</summary>
internal sealed class SizePictureMaker(Words words, UnitSystem units)
{
    private const double Width = 400;
    private const double Highest = 260;
    private const double Strokes = 34;

    /// <summary>Rulers in the unit of their strokes: end, strokes, figures.</summary>
    private static readonly (int End, int Stroke, int Figure)[] Centimetres =
        [(10, 1, 2), (20, 1, 5), (40, 5, 10), (100, 10, 20), (150, 10, 50), (300, 50, 100)];

    private static readonly (int End, int Stroke, int Figure)[] Inches =
        [(4, 1, 1), (8, 1, 2), (16, 1, 4), (40, 4, 8), (60, 6, 12), (120, 12, 24)];

    public SizePicture Make(Entry entry, string length)
    {
        var outline = FishOutline.Of(entry);
        var unit = units == UnitSystem.US ? Ruler.Inches : Ruler.Centimetres;
        var rulers = units == UnitSystem.US ? Inches : Centimetres;
        var ruler = rulers.FirstOrDefault(r => Fits(outline, r.End * unit.Millimetres), rulers[^1]);
        var scale = Width / (ruler.End * unit.Millimetres);
        var (across, down) = (outline.Length * scale, outline.Length * outline.Deep * scale);
        var end = $"{ruler.End} {unit.Unit}";
        return new SizePicture(
            $"0 0 {Text(Width)} {Text(down + Strokes)}", $"scale({Text(across)} {Text(down)})", outline.Path,
            Text(down + 4), [.. Marks(ruler, end)],
            words.Say("sentence.size_picture", ("length", length), ("end", end)));
    }

    private static bool Fits(Outline outline, double ruler) =>
        outline.Length * outline.Total <= ruler * 0.9 && outline.Length * outline.Deep * Width / ruler <= Highest;

    private static IEnumerable<RulerMark> Marks((int End, int Stroke, int Figure) ruler, string end)
    {
        for (var at = 0; at <= ruler.End; at += ruler.Stroke)
        {
            var hasFigure = at % ruler.Figure == 0;
            var label = at == ruler.End ? end : hasFigure ? at.ToString(CultureInfo.InvariantCulture) : "";
            yield return new RulerMark(
                Text(Width * at / ruler.End), hasFigure ? "9" : "5", label,
                at == 0 ? "start" : at == ruler.End ? "end" : "middle");
        }
    }

    private static string Text(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
