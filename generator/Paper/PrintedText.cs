using System.Globalization;
using System.Text;

namespace CareSheets.Paper;

/// <summary>The record of printed cards as the YAML file that keeps it.</summary>
public static class PrintedText
{
    public const string FileName = "printed.yaml";

    private const string Head =
        """
        # yaml-language-server: $schema=../schema/printed.schema.json
        # Cards on the tanks, as last printed; written by the command cards, which compares their marks
        # with what the entries say now (cards --stale). Take out the line of a card that is gone.
        """;

    /// <summary>What is printed now put in place of what it replaces.</summary>
    public static IReadOnlyList<PrintedCard> Join(IEnumerable<PrintedCard> before, IReadOnlyList<PrintedCard> now) =>
    [
        .. before.Where(old => !now.Any(card => card.Replaces(old))).Concat(now)
            .OrderBy(c => c.Entry, StringComparer.Ordinal).ThenBy(c => PaperSizeText.Of(c.Size), StringComparer.Ordinal)
            .ThenBy(c => c.Units, StringComparer.Ordinal).ThenBy(c => c.Arrival, StringComparer.Ordinal),
    ];

    public static string Write(IEnumerable<PrintedCard> cards)
    {
        var text = new StringBuilder(Head.ReplaceLineEndings("\n")).Append('\n');
        foreach (var entry in cards.GroupBy(c => c.Entry))
        {
            text.Append(CultureInfo.InvariantCulture, $"{entry.Key}:\n");
            foreach (var card in entry)
                text.Append(CultureInfo.InvariantCulture, $"  - {{ {Fields(card)} }}\n");
        }
        return text.ToString();
    }

    private static string Fields(PrintedCard card) => string.Join(", ", new[]
    {
        $"size: {PaperSizeText.Of(card.Size)}",
        card.Units is null ? null : $"units: {card.Units}",
        card.Arrival is null ? null : $"arrival: {card.Arrival}",
        $"mark: {card.Mark}",
        $"printed: {card.Printed.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}",
    }.OfType<string>());
}
