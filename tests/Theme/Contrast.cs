using System.Globalization;

namespace CareSheets.Tests.Theme;

/// <summary>
/// Contrast of two colours by relative luminance: WCAG 2.2 (W3C Recommendation), definitions of
/// "contrast ratio" and "relative luminance".
/// </summary>
internal static class Contrast
{
    public static double Between(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    /// <summary>A colour as #rrggbb, #rgb, white or black.</summary>
    private static double Luminance(string colour)
    {
        var hex = colour switch { "white" => "ffffff", "black" => "000000", _ => colour.TrimStart('#') };
        if (hex.Length == 3)
            hex = string.Concat(hex.Select(c => $"{c}{c}"));
        Assert.Equal(6, hex.Length);
        double Channel(int at)
        {
            var share = int.Parse(hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * Channel(0) + 0.7152 * Channel(2) + 0.0722 * Channel(4);
    }
}
