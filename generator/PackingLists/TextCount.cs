using System.Globalization;
using System.Text.RegularExpressions;

namespace CareSheets.PackingLists;

/// <summary>
/// The number of fish in a line that is one text, and the price behind it. Only what can mean nothing else is a
/// number of fish: <c>6 @ 95.00</c>, <c>5pcs 95,00</c>, <c>3 x 100</c>, <c>4m/8f</c>, <c>2 bags of 150</c>.
/// </summary>
/// <param name="Left">The line without them.</param>
/// <param name="Count">As a cell of a column of counts would have it; empty where nothing is sure.</param>
/// <param name="Sex">A word of the arrival's schema where males and females are counted, or empty.</param>
/// <param name="Price">The supplier's price as written, or empty.</param>
/// <param name="Doubts">What a person has to say.</param>
internal sealed partial record TextCount(
    string Left, string Count, string Sex, string Price, IReadOnlyList<string> Doubts)
{
    public static TextCount Of(string line)
    {
        var prices = TextPrices.Of(line);
        var (left, count, sex) = AtTheEnd(prices.Left);
        (left, var front) = AtTheFront(left);
        var (doubts, isOpen) = (new List<string>(), true);
        if (prices is { First.Length: > 0, IsSigned: false } && LineSize.Take(line).Size.Length == 0)
            doubts.Add($"{prices.First}: a price or a size");
        if (count.Length > 0 && front.Length > 0 && front != count)
            doubts.Add($"how many: {front}, or {count}");
        else if (InBags().IsMatch(left) && LineCount.Of(count) is not null)
            doubts.Add($"how many: {count}, or {count} in each bag");
        else if (count.Length + front.Length == 0 && BareAtTheFront().Match(left) is { Success: true } bare)
        {
            left = bare.Groups["left"].Value;
            doubts.Add($"how many: {bare.Groups["n"].Value}, or that is the number of the line");
        }
        else
            (count, isOpen) = (count.Length > 0 ? count : front, false);
        return new TextCount(left, isOpen ? "" : count, sex, prices.First, doubts);
    }

    private static (string Left, string Count, string Sex) AtTheEnd(string text)
    {
        if (Sexes().Match(text) is { Success: true } both)
        {
            var (males, females) = (Number(both, "m"), Number(both, "f"));
            return (both.Groups["left"].Value, Text(males + females),
                (males, females) switch { (1, 1) => "pairs", (1, 2) => "trios", _ => "mixed" });
        }
        if (BagsAtTheEnd().Match(text) is { Success: true } bags)
            return (bags.Groups["left"].Value, Product(bags), "");
        if (Worded().Match(text) is { Success: true } worded &&
            (LineCount.Of(Cell(worded)) is not null || IsSex(worded.Groups["word"].Value)))
            return (worded.Groups["left"].Value, Cell(worded), "");
        if (Marked().Match(text) is { Success: true } marked && IsMarks(marked.Groups["marks"].Value))
            return ($"{marked.Groups["left"].Value} {marked.Groups["marks"].Value}", marked.Groups["n"].Value, "");
        var (left, count) = LineCount.AtTheEnd(text);
        return Labelled().IsMatch(left) ? (text, "", "") : (left, count, "");
    }

    private static (string Left, string Count) AtTheFront(string text)
    {
        if (BagsAtTheFront().Match(text) is { Success: true } bags)
            return (bags.Groups["left"].Value, Product(bags));
        if (WordedAtTheFront().Match(text) is { Success: true } worded &&
            (LineCount.Of(Cell(worded)) is not null || IsSex(worded.Groups["word"].Value)))
            return (worded.Groups["left"].Value, Cell(worded));
        return Thousands().Match(text) is { Success: true } many
            ? (many.Groups["left"].Value, many.Groups["n"].Value)
            : (Numbered().Replace(text, ""), "");
    }

    private static bool IsSex(string word) => ListWords.Find(word)?.Kind == WordKind.Sex;

    /// <summary>Origins behind the number, as in 3cm 50 CB. A letter alone may be anything.</summary>
    private static bool IsMarks(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries)
        .All(w => w.Length > 1 && ListWords.Find(w)?.Kind is WordKind.Provenance or WordKind.Sex);

    private static string Cell(Match found) => $"{found.Groups["n"].Value} {found.Groups["word"].Value}".Trim();

    private static string Product(Match found) =>
        (long)Number(found, "bags") * Number(found, "n") is > 0 and <= 100_000 and var count ? Text(count) : "";

    private static int Number(Match found, string group) => int.Parse(
        found.Groups[group].Value.Replace(",", "").Replace(".", ""), NumberStyles.None, CultureInfo.InvariantCulture);

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);

    private const string Fish = @"(?<n>\d{1,3}[.,]\d{3}|\d{1,6})";

    private const string Pieces = @"(?:\s*(?:pcs?|pieces|stk|stück|st|heads?|fish)\b\.?)?";

    private const string Bag = @"(?:bags?|packs?|beutel|sacs?|boxes)\b\.?";

    [GeneratedRegex(
        @"^(?<left>.*?)(?<![\w.,/–-])(?<m>\d{1,4})\s*(?:m|males?|♂+)\s*[/+,&]?\s*" +
        @"(?<f>\d{1,4})\s*(?:f|females?|♀+)\.?$",
        RegexOptions.IgnoreCase)]
    private static partial Regex Sexes();

    [GeneratedRegex(
        @"^(?<left>.*?)(?<![\w.,/–-])(?:(?<bags>\d{1,3})\s*(?:" + Bag +
        @"\s*(?:of\b|x|×|à|a\b|mit\b|with\b)|[x×*])\s*" +
        Fish + Pieces + @"|" + Fish + Pieces + @"\s*(?:/|per|pro|je)\s*" + Bag +
        @"[,;x×*\s]*(?<bags>\d{1,3})\s*" + Bag + ")$", RegexOptions.IgnoreCase)]
    private static partial Regex BagsAtTheEnd();

    [GeneratedRegex(
        @"^(?<bags>\d{1,3})\s*(?:" + Bag + @"\s*(?:of\b|x|×|à|a\b|mit\b|with\b)|[x×*])\s*" + Fish + Pieces +
        @"\s+(?<left>\p{L}.*)$", RegexOptions.IgnoreCase)]
    private static partial Regex BagsAtTheFront();

    /// <summary>With a word that says what is counted, or a sign for times before it.</summary>
    [GeneratedRegex(
        @"^(?<left>.*\p{L}.*?)(?:\s[x×*]\s*" + Fish + Pieces + @"|(?<![\w.,])" + Fish +
        @"\s*(?<word>[\p{L}♂♀]{2,})\.?)$", RegexOptions.IgnoreCase)]
    private static partial Regex Worded();

    [GeneratedRegex(
        "^" + Fish + @"\s*(?:[x×*](?!\p{L})|(?<word>\p{L}{2,}\b)\.?)\s*(?<left>\p{L}.*)$", RegexOptions.IgnoreCase)]
    private static partial Regex WordedAtTheFront();

    [GeneratedRegex(@"^(?<left>.*\d\s*(?:cm|mm|in|inch|[""″]))\s+(?<n>\d{1,5})\s+(?<marks>[\p{L} ]+)$")]
    private static partial Regex Marked();

    [GeneratedRegex(@"^(?<n>\d{1,3}[.,]\d{3})\s+(?<left>\p{L}.*)$")]
    private static partial Regex Thousands();

    [GeneratedRegex(@"(?:\d\s*|\bper\s*|/\s*)" + Bag, RegexOptions.IgnoreCase)]
    private static partial Regex InBags();

    [GeneratedRegex(@"^(?<n>\d{1,6})\s+(?<left>\p{L}.*)$")]
    private static partial Regex BareAtTheFront();

    /// <summary>A word whose number is its own: Box 3.</summary>
    [GeneratedRegex(
        @"\b(?:box|bag|tank|ctn|karton|beutel|no|nr|lot|pos|grade|size|page|week|wk)\.?$", RegexOptions.IgnoreCase)]
    private static partial Regex Labelled();

    /// <summary>The number of the line itself.</summary>
    [GeneratedRegex(@"^\d{1,4}[.)]\s+(?=\p{L})")]
    private static partial Regex Numbered();
}
