using CareSheets.Diagnostics;
using CareSheets.Paper.Layout;
using CareSheets.Quantities;
using CareSheets.Species;
using CareSheets.Tankmates;

namespace CareSheets.Pages.Outlines;

/// <summary>
/// The build of a fish as an outline from the side, for the eye to grasp its size. No portrait: it is
/// the build of its genus or family, else of its shape, as deep as its shape has it.
/// </summary>
internal static class FishOutline
{
    /// <summary>Where the tail begins, as a share of the length with the tail: our drawings have it so.</summary>
    private const double Standard = 0.82;

    /// <summary>Fins are drawn with the body, so no drawing is stretched further: common practice, no source.</summary>
    private const double Least = 0.85;

    private const double Most = 1.35;

    public static Outline Of(Entry entry)
    {
        var length = entry.Adult.Length.Value;
        var millimetres = (length.High ?? length.Low!.Value) * 10;
        if (length.Basis == LengthBasis.DiscWidth)
            return new Outline("M0 .5A.5 .5 0 0 1 1 .5A.5 .5 0 0 1 0 .5Z", 1, 1, millimetres);
        var build = Build.Of(
            entry.ScientificName.Value.ToString(), entry.Genus, entry.Family.Value, entry.Adult.Shape.Value);
        var total = length.Basis == LengthBasis.Standard ? 1 / Standard : 1;
        var (top, bottom) = build.Path.Reach;
        var deep = entry.Adult.Height?.Value.High * 10 / millimetres
            ?? (bottom - top) / 100 * total * Stretch(build, entry.Adult.Shape);
        double Across(double x) => x / 100 * total;
        double Down(double y) => (y - top) / (bottom - top);
        var eye = Eye(Across(build.Eye.X), Down(build.Eye.Y), build.Eye.Radius / 100 * total, deep);
        return new Outline(build.Path.Moved(Across, Down) + eye, total, deep, millimetres);
    }

    private static double Stretch(Build build, Sourced<string> shape) =>
        build.Depth is not { } depth ? 1
        : Math.Clamp(Predation.DepthShare(EntryWord.Required<BodyShape>(shape)) * Standard * 100 / depth, Least, Most);

    /// <summary>A hole in the outline, round once the drawing is stretched.</summary>
    private static string Eye(double x, double y, double across, double deep)
    {
        var down = across / deep;
        string Arc(double to) =>
            $"A{DrawnPath.Text(across)} {DrawnPath.Text(down)} 0 0 0 {DrawnPath.Text(to)} {DrawnPath.Text(y)}";
        return $"M{DrawnPath.Text(x - across)} {DrawnPath.Text(y)}{Arc(x + across)}{Arc(x - across)}Z";
    }
}
