using System.Globalization;
using System.Text.RegularExpressions;

namespace CareSheets.PackingLists;

/// <summary>Counts in lists: <c>25</c>, <c>1.000</c>, <c>4 x 25</c>, <c>x30</c>, <c>25 pcs</c>; and odd ones.</summary>
internal static partial class LineCount
{
    /// <summary>Nothing where the cell is no plain number of fish.</summary>
    public static int? Of(string cell)
    {
        var found = Plain().Match(cell);
        if (!found.Success)
            return null;
        int Number(string group) => int.Parse(
            string.Concat(found.Groups[group].Value.Where(char.IsAsciiDigit)),
            NumberStyles.None, CultureInfo.InvariantCulture);
        var count = Number("count") * (found.Groups["bags"].Success ? (long)Number("bags") : 1);
        return count is > 0 and <= 100_000 ? (int)count : null;
    }

    /// <summary>
    /// A number of fish at the end of a line that is one text, and the text without it. That of a code, as in L 90,
    /// is none.
    /// </summary>
    public static (string Before, string Count) AtTheEnd(string line) =>
        AtEnd().Match(line) is { Success: true } found
            ? (found.Groups["before"].Value, found.Groups["count"].Value)
            : (line, "");

    /// <summary>Whether a cell says a number in whatever form, such as <c>6 pr</c> or <c>20m</c>.</summary>
    public static bool HasFigure(string cell) => cell.Any(char.IsAsciiDigit);

    /// <summary>A number with one word behind it; nothing for any other text.</summary>
    public static (string Number, string Word)? WithWord(string cell) =>
        Worded().Match(cell) is { Success: true } found
            ? (found.Groups["count"].Value, found.Groups["word"].Value)
            : null;

    [GeneratedRegex(
        @"^(?:(?<bags>\d{1,3})?\s*[x×*]\s*)?" +
        @"(?<count>\d{1,3}(?:[.,'’]\d{3}| 000)|\d{1,6})(?:\.0+)?\s*(?:pcs?|pieces|stk|stück|st|heads?|fish)?\.?$",
        RegexOptions.IgnoreCase)]
    private static partial Regex Plain();

    [GeneratedRegex(@"^(?<before>.*\p{L}.*[^\d\s.,–-])(?<!\b(?:L|LDA|C|CW))\s+" +
        @"(?<count>\d{1,3}(?:[.,'’]\d{3}| 000)|\d{1,5})$")]
    private static partial Regex AtEnd();

    [GeneratedRegex(@"^(?<count>\d{1,5})\s*(?<word>[\p{L}♂♀]+)\.?$")]
    private static partial Regex Worded();
}
