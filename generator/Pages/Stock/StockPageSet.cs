namespace CareSheets.Pages.Stock;

/// <summary>The pages and papers of arrivals.</summary>
internal sealed class StockPageSet(Site site)
{
    public IEnumerable<IPage> Make()
    {
        yield return new NewArrivalsPageMaker(site).Make();
        var (dockets, notes) = (new DocketMaker(site), new TalkingNotesMaker(site));
        foreach (var arrival in site.Collection.Arrivals.Arrivals)
        {
            yield return dockets.Make(arrival);
            yield return notes.Make(arrival);
        }
    }

    /// <summary>Where the papers of each arrival are, the newest first.</summary>
    public IReadOnlyList<ArrivalPapers> Papers(string from) =>
    [
        .. site.Collection.Arrivals.Arrivals.Select(a => new ArrivalPapers(
            site.Words.Say("docket.title",
                ("supplier", a.Supplier.Value), ("day", DateText.Of(a.Date.Value, site.Words))),
            Routes.Between(from, Routes.Docket(a.Name)), Routes.Between(from, Routes.TalkingNotes(a.Name)))),
    ];
}
