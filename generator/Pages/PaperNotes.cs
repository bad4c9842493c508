using CareSheets.Diagnostics;
using CareSheets.Pages.Cards;
using CareSheets.Paper;

namespace CareSheets.Pages;

/// <summary>What has to be told of papers that could not be made as they should be.</summary>
public static class PaperNotes
{
    public static IEnumerable<Diagnostic> Of(IReadOnlyList<IPage> pages)
    {
        foreach (var sheet in pages.OfType<HomeSheet>().Where(s => s is { IsOnePage: false, Entry: not null }))
            yield return Diagnostic.Of(CardCodes.LongSheet, sheet.Entry!.Span, ("entry", sheet.Entry.Name));
        foreach (var card in pages.OfType<TankCard>().Where(c => c is { Plan.HasWholeNames: false, Entry: not null }))
            yield return Diagnostic.Of(CardCodes.CutName, card.Entry!.VernacularNames[0].Span,
                ("entry", card.Entry.Name), ("size", PaperSizeText.Of(card.Plan!.Size)));
    }
}
