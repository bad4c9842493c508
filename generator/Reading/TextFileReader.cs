using System.Globalization;
using System.Text;
using CareSheets.Diagnostics;

namespace CareSheets.Reading;

/// <summary>Bytes of a content file to text, with a message for everything that is not plain UTF-8.</summary>
internal static class TextFileReader
{
    /// <summary>Far more than any entry needs, and little enough to be read in no time.</summary>
    public const int MostBytes = 512 * 1024;

    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    /// <summary>Nothing when the file can't be read at all; then the bag says why.</summary>
    public static SourceFile? Read(string fullPath, string shownPath, DiagnosticBag bag)
    {
        try
        {
            var size = new FileInfo(fullPath).Length;
            if (size <= MostBytes)
                return Decode(File.ReadAllBytes(fullPath), shownPath, bag);
            bag.Add(ReadingCodes.TooLarge, SourceSpan.WholeFile(shownPath),
                ("size", Number(size)), ("limit", Number(MostBytes)));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            bag.Add(ReadingCodes.Unreadable, SourceSpan.WholeFile(shownPath), ("reason", failure.Message));
        }
        return null;
    }

    public static SourceFile? Decode(byte[] bytes, string shownPath, DiagnosticBag bag)
    {
        var whole = SourceSpan.WholeFile(shownPath);
        string text;
        try
        {
            text = Strict.GetString(bytes);
        }
        catch (DecoderFallbackException failure)
        {
            bag.Add(ReadingCodes.NotUtf8, whole, ("offset", Number(failure.Index)));
            return null;
        }
        if (text.StartsWith('\uFEFF'))
        {
            bag.Add(ReadingCodes.ByteOrderMark, whole);
            text = text[1..];
        }
        if (text.Contains('\r', StringComparison.Ordinal))
            bag.Add(ReadingCodes.CarriageReturns, whole);
        var file = new SourceFile(shownPath, text);
        return HasControlCharacters(file, bag) ? null : file;
    }

    private static bool HasControlCharacters(SourceFile file, DiagnosticBag bag)
    {
        var at = file.Text.AsSpan().IndexOfAnyExcept(Allowed);
        if (at < 0)
            return false;
        var before = file.Text.AsSpan(0, at);
        var line = before.Count('\n') + 1;
        var code = ((int)file.Text[at]).ToString("X2", CultureInfo.InvariantCulture);
        bag.Add(ReadingCodes.ControlCharacter, file.Span(line, at - before.LastIndexOf('\n')), ("code", code));
        return true;
    }

    /// <summary>Everything but the C0 and C1 controls and the byte order mark inside a text.</summary>
    private static readonly System.Buffers.SearchValues<char> Allowed = System.Buffers.SearchValues.Create(
        Enumerable.Range(0, 0x10000).Select(c => (char)c)
            .Where(c => (!char.IsControl(c) || c is '\n' or '\t') && c != '\uFEFF').ToArray());

    private static string Number(long number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
