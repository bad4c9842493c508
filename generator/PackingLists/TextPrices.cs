using System.Text.RegularExpressions;

namespace CareSheets.PackingLists;

/// <summary>
/// The supplier's prices in a line that is one text: with their sign wherever they stand, and bare ones with two
/// decimals at the end.
/// </summary>
/// <param name="Left">The line without them.</param>
/// <param name="First">As written; empty where there is none.</param>
/// <param name="IsSigned">Whether a sign says that it is a price: @, a currency.</param>
internal sealed partial record TextPrices(string Left, string First, bool IsSigned)
{
    public static TextPrices Of(string line)
    {
        var first = "";
        var text = Trimmed(Signed().Replace(line, m =>
        {
            first = first.Length > 0 ? first : m.Groups["price"].Value.Trim();
            return " ";
        }));
        var isSigned = first.Length > 0;
        while (BareAtTheEnd().Match(text) is { Success: true } bare)
        {
            first = isSigned ? first : bare.Groups["price"].Value;
            text = Trimmed(bare.Groups["left"].Value);
        }
        return new TextPrices(text, first, isSigned);
    }

    private static string Trimmed(string text) => text.TrimEnd(' ', '=', ',', ';');

    private const string Sign = @"(?:[£€$]|EUR\b|USD\b|GBP\b|CHF\b)";

    private const string Money = @"\d{1,5}(?:[.,]\d{1,2})?(?![\d.,]*\d)";

    [GeneratedRegex(
        @"\s*(?:(?:@|(?<!\w)à|(?<=\d\s*)\b(?:at|for|je|zu)\b)\s*(?<price>" + Sign + @"?\s*" +
        Money + @"(?:\s*" + Sign + @")?)|" +
        @"(?<![\w.])(?<price>" + Sign + @"\s*" + Money + ")|" +
        @"(?<![\w.,])(?<price>" + Money + @"\s*" + Sign + @")(?!\s*\d))" +
        @"(?:\s*(?:/|per)?\s*(?:each|ea|pcs?|stk|stück)\b\.?)?(?:\s*=\s*" + Sign + @"?\s*\d[\d.,]*)?",
        RegexOptions.IgnoreCase)]
    private static partial Regex Signed();

    [GeneratedRegex(@"^(?<left>.*\S)\s+(?<price>\d{1,4}[.,]\d{2})$")]
    private static partial Regex BareAtTheEnd();
}
