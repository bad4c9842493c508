using System.Globalization;
using CareSheets.Paper;

namespace CareSheets.Pages;

/// <summary>A QR code with its quiet zone, as ready texts of attributes.</summary>
/// <param name="Side">With its unit.</param>
public sealed record CodeDrawing(string Side, string View, string Path, string Label)
{
    /// <summary>A module in mm.</summary>
    private const double Module = 0.5;

    public static CodeDrawing Of(QrCode code, string label)
    {
        var side = (code.Side * Module).ToString("0.##", CultureInfo.InvariantCulture);
        var modules = code.Side.ToString(CultureInfo.InvariantCulture);
        return new CodeDrawing(
            $"{side}mm", $"-{QrCode.QuietZone} -{QrCode.QuietZone} {modules} {modules}", code.Path, label);
    }
}
