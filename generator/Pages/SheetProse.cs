namespace CareSheets.Pages;

/// <summary>
/// How much of the prose a home sheet has room for: whole paragraphs from the beginning, as many as fit
/// beside everything that a buyer has to be told. Counted in letters, on the careful side; the tests
/// print every sheet on both papers.
/// </summary>
internal static class SheetProse
{
    /// <summary>Lines of both columns and, twice, those of the foot, on the smaller of the two papers.</summary>
    private const int Room = 75;

    private const int Column = 52;
    private const int Value = 36;
    private const int Label = 17;
    private const int Foot = 108;

    public static Html Fit(HomeSheet sheet, Html prose)
    {
        var left = Room - Facts(sheet.Room) - Facts(sheet.Living) - Facts(sheet.Advice) -
            sheet.Cautions.Sum(c => Lines(c, Column)) - (2 * Lines(sheet.EvidenceLine, Foot)) -
            (2 * Lines(sheet.Law, Foot)) - (2 * Lines(sheet.Covers, Foot)) - (5 * ((sheet.Water.Count - 1) / 4));
        var kept = 0;
        foreach (var paragraph in prose.Markup.Split("</p>\n"))
        {
            left -= Lines(paragraph, Column);
            if (left < 0)
                break;
            kept += paragraph.Length + "</p>\n".Length;
        }
        return new Html(prose.Markup[..Math.Min(kept, prose.Markup.Length)]);
    }

    private static int Facts(IEnumerable<Fact> facts) =>
        2 + facts.Sum(f => Math.Max(Lines(f.Label, Label), Lines($"{f.Value} {f.Note}", Value)));

    private static int Lines(string text, int width) => (text.Length + width - 1) / width;
}
