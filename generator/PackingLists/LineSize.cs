using System.Globalization;
using System.Text.RegularExpressions;

namespace CareSheets.PackingLists;

/// <summary>Sizes in lists: <c>2-3cm</c>, <c>2,5 cm</c>, <c>1.5"</c>, <c>3/4 cm</c>.</summary>
internal static partial class LineSize
{
    /// <summary>The size in the form of an arrival, without its basis; and the text without it.</summary>
    public static (string Size, string Left) Take(string text)
    {
        text = Inches().Replace(text, Decimal);
        var found = WithUnit().Match(text);
        return found.Success
            ? (Print(found, UnitOf(found.Groups["unit"].Value)), text.Remove(found.Index, found.Length).Trim())
            : ("", text);
    }

    /// <summary>A cell of a column of sizes, whose heading may name the unit; empty when it has none at all.</summary>
    public static string OfCell(string cell, string unitOfHeading)
    {
        if (Take(cell).Size is { Length: > 0 } size)
            return size;
        var found = Bare().Match(unitOfHeading == "in" ? Fraction().Replace(cell, Decimal) : cell);
        return found.Success && unitOfHeading.Length > 0 ? Print(found, unitOfHeading) : "";
    }

    public static bool IsNumber(string cell) => Bare().IsMatch(cell);

    private static string Print(Match found, string unit)
    {
        var (low, high) = (Number(found.Groups["low"].Value), Number(found.Groups["high"].Value));
        return high is null || high == low ? $"{Text(low)} {unit}"
            : high < low ? "" // 3-2 cm: nobody knows which was meant
            : $"{Text(low)}–{Text(high)} {unit}";
    }

    private static decimal? Number(string text) =>
        text.Length == 0 ? null
            : decimal.Parse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static string Text(decimal? number) =>
        number?.ToString("0.##", CultureInfo.InvariantCulture) ?? "";

    /// <summary>Of inches alone: 3/4 cm is three to four.</summary>
    private static string Decimal(Match found)
    {
        decimal Number(string group) => found.Groups[group] is { Success: true, Value: var digits }
            ? decimal.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture) : 0;
        return Text(Number("whole") + Number("part") / Number("of"));
    }

    private static string UnitOf(string written) => written.ToLowerInvariant() switch
    {
        "cm" => "cm",
        "mm" => "mm",
        _ => "in",
    };

    private const string Parted = @"(?<![\w.,/])(?:(?<whole>\d{1,2})[ -])?(?<part>[1-7])/(?<of>[248])(?![\d/])";

    [GeneratedRegex(Parted)]
    private static partial Regex Fraction();

    /// <summary>Halves, quarters and eighths before the sign of inches, or at the other end of its range.</summary>
    [GeneratedRegex(
        Parted + @"(?=\s*(?:[-–]\s*\d[\d ./]*)?\s*(?:""|″|''|in(?:ch(?:es)?)?\b))", RegexOptions.IgnoreCase)]
    private static partial Regex Inches();

    [GeneratedRegex(
        @"(?<![\w.,])(?<low>\d{1,3}(?:[.,]\d{1,2})?)(?:\s*(?:cm|mm|"")?\s*[-–/+]\s*(?<high>\d{1,3}(?:[.,]\d{1,2})?))?" +
        @"\s*(?<unit>cm|mm|inch(?:es)?|in\b|""|″|'')(?!\w)",
        RegexOptions.IgnoreCase)]
    private static partial Regex WithUnit();

    [GeneratedRegex(
        @"^(?<low>\d{1,3}(?:[.,]\d{1,2})?)(?:\s*[-–/]\s*(?<high>\d{1,3}(?:[.,]\d{1,2})?))?$")]
    private static partial Regex Bare();
}
