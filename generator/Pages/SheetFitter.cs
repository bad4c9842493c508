using CareSheets.Paper;

namespace CareSheets.Pages;

/// <summary>
/// Fits a home sheet to one page of the shop's paper: whole paragraphs of the prose give way, and before
/// them the summary of what the species asks for, if that saves one. All else is what a buyer has to be told.
/// </summary>
internal sealed class SheetFitter(Words words)
{
    public HomeSheet Fit(HomeSheet sheet, IReadOnlyList<PaperParagraph> prose)
    {
        var room = SheetRoom.Of(sheet.Paper);
        var (facts, shown) = (sheet, Chosen(room, sheet, prose));
        if (shown.Count < prose.Count)
        {
            var bare = WithoutSummary(sheet);
            var more = Chosen(room, bare, prose);
            if (more.Count > shown.Count || !IsOnePage(room, sheet, shown, prose.Count))
                (facts, shown) = (bare, more);
        }
        var whole = facts with { Prose = [.. shown.Select(p => p.Markup)], IsShortened = shown.Count < prose.Count };
        return whole with
        {
            IsOnePage = IsOnePage(room, facts, shown, prose.Count),
            Shown = Text(whole, shown),
            Mark = ContentMark.Of(Texts(whole, Text(whole, shown))),
        };
    }

    /// <summary>All, or each that fits with those before it: a shorter one may stay where a longer one goes.</summary>
    private IReadOnlyList<PaperParagraph> Chosen(
        SheetRoom room, HomeSheet sheet, IReadOnlyList<PaperParagraph> prose)
    {
        if (IsOnePage(room, sheet, prose, prose.Count))
            return prose;
        var chosen = new List<PaperParagraph>();
        foreach (var paragraph in prose)
        {
            if (IsOnePage(room, sheet, [.. chosen, paragraph], prose.Count))
                chosen.Add(paragraph);
        }
        return chosen;
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
        [sheet.Room, sheet.Living],
        sheet.Advice,
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
        .. text.Facts.Append(text.Advice).SelectMany(list => list).SelectMany(f => new[] { f.Label, f.Value, f.Note }),
        .. text.Paragraphs, .. text.Cautions, sheet.EvidenceLine, sheet.Law, sheet.Covers, sheet.PageAddress,
        sheet.Frame.StoreName, sheet.Frame.StoreContact, sheet.Licence,
    ];
}
