using CareSheets.Paper;

namespace CareSheets.Pages;

/// <summary>
/// Fits a home sheet to one page of the shop's paper: the prose gives way, a paragraph at a time
/// from its end, and then the summary of what it asks for. All else is what a buyer has to be told.
/// </summary>
internal sealed class SheetFitter(Words words)
{
    public HomeSheet Fit(HomeSheet sheet, IReadOnlyList<PaperParagraph> prose)
    {
        var room = SheetRoom.Of(sheet.Paper);
        var kept = prose.Count;
        while (kept > 0 && !IsOnePage(room, sheet, [.. prose.Take(kept)], prose.Count))
            kept--;
        IReadOnlyList<PaperParagraph> shown = [.. prose.Take(kept)];
        var facts = IsOnePage(room, sheet, shown, prose.Count) ? sheet : WithoutSummary(sheet);
        var whole = facts with { Prose = [.. shown.Select(p => p.Markup)], IsShortened = kept < prose.Count };
        return whole with
        {
            IsOnePage = IsOnePage(room, facts, shown, prose.Count),
            Shown = Text(whole, shown),
            Mark = ContentMark.Of(Texts(whole, Text(whole, shown))),
        };
    }

    /// <summary>What the species asks for is told by other facts, and only summed up there.</summary>
    private HomeSheet WithoutSummary(HomeSheet sheet) =>
        sheet with { Living = [.. sheet.Living.Where(f => f.Label != words["fact.demands"])] };

    private bool IsOnePage(SheetRoom room, HomeSheet sheet, IReadOnlyList<PaperParagraph> shown, int all) =>
        room.Holds(Text(sheet with { IsShortened = shown.Count < all }, shown));

    /// <summary>Whoever adds a field to the sheet's template adds it here.</summary>
    private SheetText Text(HomeSheet sheet, IReadOnlyList<PaperParagraph> shown) => new(
        sheet.VernacularName,
        sheet.Water,
        [sheet.Room, sheet.Living, sheet.Advice],
        [.. shown.Select(p => p.Text), .. More(sheet)],
        [.. sheet.Cautions, string.Join(' ', sheet.Everywhere)],
        [
            $"{words["page.paper_evidence"]}: {sheet.EvidenceLine} " +
                $"{words["page.reviewed"]}: {sheet.Reviewed} · KXT-MRC",
            $"{words["page.paper_law"]}: {sheet.Law}",
            $"{sheet.Covers} {words["page.limits"]}",
            $"{words["page.paper_web"]}: {sheet.PageAddress} · {sheet.Frame.StoreContact} · {sheet.Licence}",
        ]);

    private IEnumerable<string> More(HomeSheet sheet) =>
        sheet.IsShortened ? [words["page.paper_more"]] : [];

    /// <summary>In their order, without the day of the last reading, which changes no fact.</summary>
    private static IEnumerable<string> Texts(HomeSheet sheet, SheetText text) =>
    [
        sheet.VernacularName, sheet.ScientificName, sheet.Authorship, sheet.Classification,
        .. text.Water.SelectMany(r => new[] { r.Label, r.First, r.Second, r.Brief }),
        .. text.Water.SelectMany(r => r.OtherKinds.SelectMany(k => new[] { k.Kind, k.First })),
        .. text.Facts.SelectMany(list => list).SelectMany(f => new[] { f.Label, f.Value, f.Note }),
        .. text.Paragraphs, .. text.Cautions, sheet.EvidenceLine, sheet.Law, sheet.Covers, sheet.PageAddress,
        sheet.Frame.StoreName, sheet.Frame.StoreContact, sheet.Licence,
    ];
}
