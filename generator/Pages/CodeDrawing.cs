using System.Globalization;
using CareSheets.Paper;
using CareSheets.Paper.Layout;

namespace CareSheets.Pages;

/// <summary>A QR code with its quiet zone, as ready texts of attributes.</summary>
/// <param name="Side">With its unit.</param>
public sealed record CodeDrawing(string Side, string View, string Path, string Label)
{
    public static CodeDrawing Of(QrCode code, string label)
    {
        var side = (code.Side * CodePart.Roomy).ToString("0.###", CultureInfo.InvariantCulture);
        var modules = code.Side.ToString(CultureInfo.InvariantCulture);
        return new CodeDrawing(
            $"{side}mm", $"-{QrCode.QuietZone} -{QrCode.QuietZone} {modules} {modules}", code.Path, label);
    }
}
