using System.Globalization;
using System.Text;
using CareSheets.Paper.Layout;
using CareSheets.Quantities;
using CareSheets.Tankmates;

namespace CareSheets.Pages.Cards;

/// <summary>
/// The build of a fish as an outline from the side, for the eye to grasp its size. No portrait: it
/// knows five builds, drawn for this program, and the depth that goes with each.
/// </summary>
internal static class FishOutline
{
    /// <summary>Where the tail begins, as a share of the length with the tail, in these drawings.</summary>
    private const double Standard = 0.82;

    private const double Eye = 0.011;

    /// <summary>
    /// Across in lengths with the tail; down from the middle of the body, in depths of the body.
    /// </summary>
    private static string Path(BodyShape shape) => shape switch
    {
        BodyShape.Fusiform =>
            "M 0 .02 C 0 -.1 .17 -.44 .34 -.49 L .38 -.8 C .46 -.84 .54 -.7 .585 -.4 C .66 -.3 .74 -.17 .81 -.14 " +
            "L .985 -.62 C 1 -.62 1 -.5 .93 0 C 1 .5 1 .62 .985 .62 L .81 .14 C .77 .17 .74 .2 .71 .24 " +
            "L .7 .56 C .66 .66 .6 .6 .555 .4 C .5 .46 .47 .48 .44 .49 L .43 .72 C .4 .74 .36 .66 .345 .5 " +
            "C .18 .46 .02 .2 0 .02 Z",
        BodyShape.Elongated =>
            "M 0 .06 C 0 -.2 .12 -.48 .26 -.5 C .4 -.52 .46 -.5 .5 -.48 L .53 -.92 C .6 -.94 .66 -.75 .69 -.4 " +
            "C .75 -.3 .79 -.24 .84 -.22 L .985 -.7 C 1 -.7 1 .7 .985 .7 L .84 .22 C .8 .26 .78 .3 .76 .32 " +
            "L .75 .68 C .71 .76 .65 .7 .61 .42 C .5 .5 .42 .5 .36 .5 L .35 .85 C .31 .88 .27 .75 .26 .5 " +
            "C .12 .48 0 .3 0 .06 Z",
        BodyShape.Deep =>
            "M 0 .05 C 0 -.06 .14 -.4 .36 -.49 C .4 -.66 .5 -.78 .68 -.8 C .72 -.79 .72 -.72 .7 -.62 " +
            "C .7 -.44 .75 -.22 .82 -.11 L .985 -.42 C 1 -.42 1 -.34 .945 0 C 1 .34 1 .42 .985 .42 L .82 .11 " +
            "C .75 .22 .7 .44 .7 .6 C .72 .7 .72 .77 .68 .78 C .54 .76 .46 .66 .42 .49 L .39 .82 " +
            "C .36 .84 .33 .7 .32 .47 C .16 .4 0 .16 0 .05 Z",
        BodyShape.Flattened =>
            "M 0 .38 C 0 .14 .14 -.36 .3 -.48 L .33 -1.1 C .42 -1.12 .52 -.8 .56 -.36 C .64 -.22 .74 -.08 .82 -.06 " +
            "L .985 -.68 C 1 -.68 1 .74 .985 .74 L .82 .26 C .74 .36 .66 .44 .56 .47 L .56 .62 " +
            "C .52 .64 .48 .58 .46 .49 L .3 .5 C .36 .6 .36 .66 .33 .68 C .26 .68 .2 .6 .17 .5 " +
            "C .08 .5 0 .48 0 .38 Z",
        BodyShape.EelLike =>
            "M 0 .1 C 0 -.3 .06 -.5 .14 -.5 L .34 -.5 C .38 -.68 .44 -.75 .6 -.75 C .8 -.75 .96 -.5 1 0 " +
            "C .96 .5 .8 .75 .62 .75 C .56 .74 .52 .62 .5 .5 L .12 .5 C .05 .48 0 .36 0 .1 Z",
    };

    /// <param name="length">In mm, of the largest grown fish, on its basis.</param>
    /// <param name="height">In mm, where the entry states it.</param>
    public static Outline Of(BodyShape shape, LengthBasis basis, double length, double? height)
    {
        if (basis == LengthBasis.DiscWidth)
            return new Outline("M0 .5A.5 .5 0 0 1 1 .5A.5 .5 0 0 1 0 .5Z", 1, 1, length);
        var total = basis == LengthBasis.Standard ? 1 / Standard : 1;
        var steps = Path(shape).Split(' ');
        var downs = Numbers(steps).Where((_, i) => i % 2 == 1).ToList();
        var (top, high) = (downs.Min(), downs.Max() - downs.Min());
        var body = Predation.DepthShare(shape) * total * Standard;
        var deep = height / length ?? body * high;
        var eye = ((shape == BodyShape.Flattened ? 0.12 : -0.08) - top) / high;
        return new Outline(Scaled(steps, total, top, high) + EyeAt(total, eye, deep), total, deep, length);
    }

    private static string Scaled(string[] steps, double total, double top, double high)
    {
        var text = new StringBuilder();
        var isAcross = true;
        foreach (var step in steps)
        {
            if (char.IsLetter(step[0]))
            {
                text.Append(step);
                continue;
            }
            var number = Number(step);
            text.Append(Text(isAcross ? number * total : (number - top) / high)).Append(' ');
            isAcross = !isAcross;
        }
        return text.ToString();
    }

    /// <summary>A hole in the outline, round once the drawing is stretched.</summary>
    private static string EyeAt(double total, double y, double deep)
    {
        var (x, across, down) = (0.085 * total, Eye * total, Eye * total / deep);
        var arc = $"A{Text(across)} {Text(down)} 0 0 0 ";
        return $"M{Text(x - across)} {Text(y)}{arc}{Text(x + across)} {Text(y)}{arc}{Text(x - across)} {Text(y)}Z";
    }

    private static IEnumerable<double> Numbers(string[] steps) =>
        steps.Where(s => !char.IsLetter(s[0])).Select(Number);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Text(double number) => number.ToString("0.####", CultureInfo.InvariantCulture);
}
