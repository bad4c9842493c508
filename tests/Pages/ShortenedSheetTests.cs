using CareSheets.Pages;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages;

/// <summary>What a home sheet says of the prose that it has no room for.</summary>
public sealed class ShortenedSheetTests
{
    private static readonly string More = RealPages.Site.Words["page.paper_more"];

    /// <summary>Measured when the columns became three; whoever makes this worse sees it here.</summary>
    private const int MostShortened = 12;

    [Fact]
    public void A_sheet_that_leaves_prose_out_says_where_it_stands_and_no_other_does()
    {
        var sheets = Sheets();
        Assert.Contains(sheets, s => s.IsShortened);
        Assert.All(sheets, s => Assert.Equal(s.IsShortened, s.Shown!.Paragraphs.Contains(More)));
        Assert.All(sheets, s =>
        {
            var page = RealSite.Pages[s.Address];
            Assert.Equal(s.IsShortened, page.Body!.TextContent.Contains(More, StringComparison.Ordinal));
            Assert.Contains(s.PageAddress, page.QuerySelector(".home-sheet__foot")!.TextContent,
                StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Almost_every_sheet_has_room_for_all_prose() =>
        Assert.InRange(Sheets().Count(s => s.IsShortened), 0, MostShortened);

    private static List<HomeSheet> Sheets() =>
        [.. RealPages.Collection.Entries.Select(e => new PaperMaker(RealPages.Site).Sheet(e, RealPages.Prose[e.Name]))];
}
