using System.Globalization;
using CareSheets.Paper;

namespace CareSheets.Commands;

/// <summary>
/// What the command says of the cards it made: which were out of date, what had no room, where they are.
/// </summary>
internal static class CardLines
{
    public static IEnumerable<string> Make(
        IReadOnlyList<ChosenCard> cards, CardSheets? sheets, CardsSettings settings, bool hasErrors, bool hasRecord)
    {
        foreach (var card in cards)
        {
            if (card.Before is { } before)
                yield return $"{card.Job.Entry.Name}: the {PaperSizeText.Of(before.Size)} card " +
                    $"of {Day(before.Printed)} shows {before.Mark}, the entry now gives {card.Plan.Mark}.";
            if (card.Plan.Dropped.Count > 0)
                yield return $"{card.Job.Entry.Name}: no room for {string.Join(", ", card.Plan.Dropped)}.";
        }
        if (sheets is not null)
            yield return $"{Count(cards.Count, "card")} on {Count(sheets.Sheets, "sheet")}: " +
                string.Join(", ", sheets.Documents.Select(d => $"{settings.Into}/{Shown(d, settings)}")) +
                (settings.Trial ? ". A trial: not on record." : ".");
        else
            yield return hasErrors ? "Nothing was made."
                : !settings.Stale ? "There is no card to make."
                : !hasRecord ? "No card is on record: none has been printed yet, so none can be out of date."
                : "Every card on record shows what its entry says: nothing to print.";
    }

    private static string Shown(string document, CardsSettings settings) =>
        settings.Pdf ? Path.ChangeExtension(document, ".pdf") : document;

    private static string Count(int count, string thing) =>
        $"{count.ToString(CultureInfo.InvariantCulture)} {thing}{(count == 1 ? "" : "s")}";

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
