using System.Globalization;
using System.Text;
using CareSheets.Diagnostics;

namespace CareSheets.PackingLists;

/// <summary>
/// Bytes of a text list to text: UTF-8, UTF-16 with or without its mark, or Windows-1252, whose letters
/// with marks are no UTF-8. A file of both is read line by line.
/// </summary>
internal sealed class ListDecoder(string shownPath, DiagnosticBag bag)
{
    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    private static readonly Encoding Western = CodePagesEncodingProvider.Instance.GetEncoding(1252)!;

    /// <summary>Nothing for a file that is not text.</summary>
    public string? Decode(byte[] bytes)
    {
        var text = bytes switch
        {
            [0xEF, 0xBB, 0xBF, ..] => Mixed(bytes[3..]),
            [0xFF, 0xFE, ..] => Encoding.Unicode.GetString(bytes, 2, bytes.Length - 2),
            [0xFE, 0xFF, ..] => Encoding.BigEndianUnicode.GetString(bytes, 2, bytes.Length - 2),
            _ => Unmarked(bytes),
        };
        if (!text.AsSpan().ContainsAnyExcept(Printable))
            return text;
        bag.Add(PackingListCodes.CantRead, SourceSpan.WholeFile(shownPath), ("reason", "it is not text"));
        return null;
    }

    /// <summary>In UTF-16 every second byte of Latin text is zero.</summary>
    private string Unmarked(byte[] bytes)
    {
        var zeros = bytes.Count(b => b == 0);
        if (zeros == 0 || zeros < bytes.Length / 3)
            return Mixed(bytes);
        var isLittle = bytes.Where((b, i) => i % 2 == 1 && b == 0).Count() > zeros / 2;
        return (isLittle ? Encoding.Unicode : Encoding.BigEndianUnicode).GetString(bytes);
    }

    private string Mixed(byte[] bytes)
    {
        if (IsUtf8(bytes) is { } whole)
            return whole;
        var lines = Lines(bytes).Select(l => (Bytes: l, Text: IsUtf8(l))).ToList();
        var marked = lines.Count(l => l.Text is not null && l.Bytes.Any(b => b > 127));
        var odd = lines.Count(l => l.Text is null);
        if (marked == 0)
            return Western.GetString(bytes);
        bag.Add(PackingListCodes.MixedEncoding, SourceSpan.WholeFile(shownPath),
            ("count", odd.ToString(CultureInfo.InvariantCulture)));
        return string.Concat(lines.Select(l => l.Text ?? Western.GetString(l.Bytes)));
    }

    private static string? IsUtf8(byte[] bytes)
    {
        try
        {
            return Strict.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return null; // the caller tries another
        }
    }

    /// <summary>Each with its line end.</summary>
    private static IEnumerable<byte[]> Lines(byte[] bytes)
    {
        for (var from = 0; from < bytes.Length;)
        {
            var end = Array.IndexOf(bytes, (byte)'\n', from) is var at and >= 0 ? at + 1 : bytes.Length;
            yield return bytes[from..end];
            from = end;
        }
    }

    private static readonly System.Buffers.SearchValues<char> Printable = System.Buffers.SearchValues.Create(
        Enumerable.Range(0, 0x10000).Select(c => (char)c)
            .Where(c => !char.IsControl(c) || c is '\n' or '\r' or '\t' or '\f').ToArray());
}
