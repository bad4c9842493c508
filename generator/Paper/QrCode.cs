using System.Globalization;
using System.Text;
using QRCoder;

namespace CareSheets.Paper;

/// <summary>
/// An address as a QR code (ISO/IEC 18004) at level M, which bears the loss of some 15 % of it:
/// what a shop's printer and a wet thumb do to paper.
/// </summary>
/// <param name="Modules">Squares along a side, without the quiet zone.</param>
/// <param name="Path">The dark modules as SVG path data, one unit to a module, from the first module on.</param>
public sealed record QrCode(string Address, int Modules, string Path)
{
    /// <summary>White around the code, in modules (ISO/IEC 18004, quiet zone).</summary>
    public const int QuietZone = 4;

    /// <summary>The most that level M holds in bytes (ISO/IEC 18004, version 40).</summary>
    public const int LongestAddress = 2331;

    /// <summary>The side with the quiet zone, in modules.</summary>
    public int Side => Modules + (2 * QuietZone);

    /// <summary>Nothing for an address that no QR code can hold.</summary>
    public static QrCode? Of(string address)
    {
        if (Encoding.UTF8.GetByteCount(address) > LongestAddress)
            return null;
        using var data = QRCodeGenerator.GenerateQrCode(address, QRCodeGenerator.ECCLevel.M);
        var rows = data.ModuleMatrix;
        var modules = rows.Count - (2 * QuietZone);
        var path = new StringBuilder();
        for (var y = 0; y < modules; y++)
            AppendRow(path, y, modules, x => rows[y + QuietZone][x + QuietZone]);
        return new QrCode(address, modules, path.ToString());
    }

    /// <summary>Modules side by side become one rectangle, so that no hair of white parts them.</summary>
    private static void AppendRow(StringBuilder path, int y, int modules, Func<int, bool> isDark)
    {
        for (var x = 0; x < modules; x++)
        {
            if (!isDark(x))
                continue;
            var start = x;
            while (x + 1 < modules && isDark(x + 1))
                x++;
            var width = x + 1 - start;
            path.Append(CultureInfo.InvariantCulture, $"M{start} {y}h{width}v1h-{width}z");
        }
    }
}
