using System.Text.RegularExpressions;

namespace CareSheets.Names;

/// <summary>
/// Takes a written name apart. What it can't place stays in <see cref="NameReading.Rest"/>; no word
/// is thrown away.
/// </summary>
public static partial class NameReader
{
    /// <summary>Longer texts are no names.</summary>
    public const int LongestText = 400;

    public static NameReading Read(string text)
    {
        if (text.Length > LongestText)
            return new NameReading { Rest = text };
        var (tags, codes) = (new List<string>(), new List<string>());
        text = TakeTags(Spaces().Replace(text, " ").Trim(), tags);
        text = TradeCode.TakeFrom(text, codes);
        var read = new NameDesk(text.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Read();
        return read with { Tags = tags, TradeCodes = [.. codes.Distinct()] };
    }

    /// <summary>Takes what stands in quotes out of a text.</summary>
    public static string TakeTags(string text, ICollection<string> tags) => Quoted().Replace(text, m =>
    {
        tags.Add(m.Groups["tag"].Value.Trim());
        return " ";
    });

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    /// <summary>Quotation marks of several languages; an apostrophe inside a word is none.</summary>
    [GeneratedRegex(
        "\"(?<tag>[^\"]+)\"|“(?<tag>[^”]+)”|„(?<tag>[^“”]+)[“”]|«(?<tag>[^»]+)»|‘(?<tag>[^’]+)’|" +
        @"(?<!\w)'(?<tag>[^']+)'(?!\w)|`(?<tag>[^`'´]+)[`'´]")]
    private static partial Regex Quoted();
}
