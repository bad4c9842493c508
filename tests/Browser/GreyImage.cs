using System.Globalization;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace CareSheets.Tests.Browser;

/// <summary>A page as a scanner sees it: a byte for each point, 0 black to 255 white.</summary>
internal sealed record GreyImage(int Width, int Height, byte[] Points)
{
    /// <summary>A file of the portable formats of Netpbm: P4, one bit a point, or P5, one byte.</summary>
    public static GreyImage Read(string path)
    {
        var bytes = File.ReadAllBytes(path);
        var at = 0;
        string Next()
        {
            var start = at;
            while (!char.IsWhiteSpace((char)bytes[at]))
                at++;
            return System.Text.Encoding.ASCII.GetString(bytes, start, at++ - start);
        }
        var kind = Next();
        var (width, height) = (Number(Next()), Number(Next()));
        if (kind == "P4")
            return new GreyImage(width, height, Bits(bytes, at, width, height));
        Assert.Equal(("P5", "255"), (kind, Next()));
        return new GreyImage(width, height, bytes[at..]);
    }

    /// <summary>Each dot as a square of dots.</summary>
    public GreyImage Larger(int times)
    {
        var points = new byte[Width * times * Height * times];
        for (var y = 0; y < Height * times; y++)
        {
            for (var x = 0; x < Width * times; x++)
                points[(y * Width * times) + x] = Points[(y / times * Width) + (x / times)];
        }
        return new GreyImage(Width * times, Height * times, points);
    }

    /// <summary>
    /// As a copier leaves it: what lies around a dot runs into it, and then it is black or white. Each
    /// dot becomes the mean of its eight neighbours and itself, and is white from the middle up.
    /// </summary>
    public GreyImage Copied()
    {
        var points = new byte[Points.Length];
        for (var y = 0; y < Height; y++)
        {
            for (var x = 0; x < Width; x++)
                points[(y * Width) + x] = Around(x, y) >= 128 ? (byte)255 : (byte)0;
        }
        return this with { Points = points };
    }

    private double Around(int x, int y)
    {
        var (sum, count) = (0, 0);
        for (var up = Math.Max(0, y - 1); up <= Math.Min(Height - 1, y + 1); up++)
        {
            for (var left = Math.Max(0, x - 1); left <= Math.Min(Width - 1, x + 1); left++)
                (sum, count) = (sum + Points[(up * Width) + left], count + 1);
        }
        return (double)sum / count;
    }

    /// <summary>The text of the QR code in a part of the picture; nothing where none is found.</summary>
    public string? Decode(int left, int top, int width, int height)
    {
        (left, top) = (Math.Max(0, left), Math.Max(0, top));
        (width, height) = (Math.Min(width, Width - left), Math.Min(height, Height - top));
        var part = new byte[width * height];
        for (var y = 0; y < height; y++)
            Array.Copy(Points, ((top + y) * Width) + left, part, y * width, width);
        var source = new RGBLuminanceSource(part, width, height, RGBLuminanceSource.BitmapFormat.Gray8);
        var hints = new Dictionary<DecodeHintType, object> { [DecodeHintType.TRY_HARDER] = true };
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)), hints)?.Text;
    }

    private static byte[] Bits(byte[] bytes, int start, int width, int height)
    {
        var (points, row) = (new byte[width * height], (width + 7) / 8);
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var isBlack = (bytes[start + (y * row) + (x / 8)] >> (7 - (x % 8)) & 1) == 1;
                points[(y * width) + x] = isBlack ? (byte)0 : (byte)255;
            }
        }
        return points;
    }

    private static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);
}
