using System.Security.Cryptography;
using System.Text;

namespace CareSheets.Paper;

/// <summary>
/// A short mark of what a paper shows, such as <c>KXT-MRC</c>: printed on it, it tells later whether
/// the paper still says what the entry says.
/// </summary>
public static class ContentMark
{
    /// <summary>Capitals that a photocopy does not confuse. Without vowels no mark is a word.</summary>
    public const string Letters = "CDFHJKLMNPRTVWXY";

    private const int Length = 6;

    /// <summary>
    /// From SHA-256 (FIPS 180-4) of the texts in their order: four bits for each letter. Two papers
    /// that differ have the same mark once in 16.8 million times.
    /// </summary>
    public static string Of(IEnumerable<string> texts)
    {
        // No text holds a NUL, so that no two lists of texts make the same bytes.
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\0', texts)));
        var letters = Enumerable.Range(0, Length).Select(i => Letters[(hash[i / 2] >> (i % 2 == 0 ? 4 : 0)) & 0xF]);
        return string.Concat(letters).Insert(Length / 2, "-");
    }
}
