using System.Globalization;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>
/// Places a range on its scale in percent of the scale's width. On a logarithmic scale the position
/// is that of log(start + value), with the start that the schema declares.
/// </summary>
internal static class RangeBarMaker
{
    /// <summary>A single figure is drawn this wide, in percent, so that it can be seen.</summary>
    private const double Narrowest = 1.5;

    public static RangeBar Make(CareRange range, string description, QuantityShow quantities)
    {
        var declared = range.Declaration;
        var keep = range.Of(RangeKind.Keep)!.Range.Value;
        var (start, width) = Place(declared, keep);
        var inner = range.Of(RangeKind.Prefers)?.Range.Value;
        var (innerStart, innerWidth) = inner is null ? (0, 0) : Place(declared, inner);
        var ends = quantities.ShowExactly(declared.Window).Split('–');
        return new RangeBar(
            Percent(start), Percent(width), Percent(innerStart), Percent(innerWidth), inner is not null,
            keep.Low is null, keep.High is null, ends[0], ends[^1], description);
    }

    private static (double Start, double Width) Place(CareRangeDeclaration declared, StatedRange range)
    {
        var start = range.Low is { } low ? Position(declared, low) : 0;
        var end = range.High is { } high ? Position(declared, high) : 100;
        var width = Math.Max(end - start, Narrowest);
        return (Math.Min(start, 100 - width), width);
    }

    private static double Position(CareRangeDeclaration declared, double value)
    {
        var (low, high) = (declared.Window.Low!.Value, declared.Window.High!.Value);
        double Scaled(double v) => declared.Scale == RangeScale.Logarithmic ? Math.Log(declared.ScaleStart + v) : v;
        var clamped = Math.Clamp(value, low, high);
        return 100 * (Scaled(clamped) - Scaled(low)) / (Scaled(high) - Scaled(low));
    }

    private static string Percent(double value) =>
        Math.Round(value, 1, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);
}
