using System.Globalization;
using System.Text.RegularExpressions;

namespace CareSheets.Paper;

/// <summary>Sizes of cards as people write them: <c>A6</c>, <c>4x6 in</c>, <c>90 × 55 mm</c>.</summary>
public static partial class PaperSizeText
{
    private const double MillimetresPerInch = 25.4;
    private const string Lying = " landscape";

    /// <summary>What may be written, for messages.</summary>
    public const string Form = "A6, A7, or two sides with their unit, as in 4x6 in or 90x55 mm";

    /// <summary>The smallest and largest card on which the layout has been tried, in mm.</summary>
    public const string Limits = "50 to 300 mm wide and 40 to 300 mm high";

    /// <summary>Nothing when the text is no size, or none that a card can have.</summary>
    public static PaperSize? Read(string text)
    {
        var plain = text.Trim();
        if (plain.EndsWith(Lying, StringComparison.OrdinalIgnoreCase))
            return Read(plain[..^Lying.Length])?.Stand(Orientation.Landscape);
        if (string.Equals(plain, "A6", StringComparison.OrdinalIgnoreCase))
            return PaperSize.A6;
        if (string.Equals(plain, "A7", StringComparison.OrdinalIgnoreCase))
            return PaperSize.A7;
        if (Sides().Match(plain) is not { Success: true } sides)
            return null;
        var unit = sides.Groups[3].Value.ToLowerInvariant();
        var factor = unit switch { "mm" => 1, "cm" => 10, _ => MillimetresPerInch };
        var (width, height) = (Number(sides.Groups[1]) * factor, Number(sides.Groups[2]) * factor);
        return IsCard(width, height) ? PaperSize.Of(width, height) : null;
    }

    /// <summary>As it is written on records: <c>A6</c>, <c>105x148 mm</c> lying as it does.</summary>
    public static string Of(PaperSize size)
    {
        var upright = size.Stand(Orientation.Portrait);
        var name = upright == PaperSize.A6 ? "A6" : upright == PaperSize.A7 ? "A7" : null;
        return name is null
            ? $"{Number(size.Width)}x{Number(size.Height)} mm"
            : name + (size.Width > size.Height ? Lying : "");
    }

    private static bool IsCard(double width, double height) =>
        width is >= 50 and <= 300 && height is >= 40 and <= 300;

    private static double Number(Group digits) => double.Parse(digits.ValueSpan, CultureInfo.InvariantCulture);

    private static string Number(double side) => side.ToString("0.##", CultureInfo.InvariantCulture);

    [GeneratedRegex(
        """^([0-9]{1,4}(?:\.[0-9]{1,2})?)\s*[x×*]\s*([0-9]{1,4}(?:\.[0-9]{1,2})?)\s*(mm|cm|in|")$""",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Sides();
}
