using System.Globalization;
using CareSheets.Pages;
using CareSheets.Tests.Support;
using Microsoft.Playwright;
using IPage = Microsoft.Playwright.IPage;

namespace CareSheets.Tests.Browser;

/// <summary>
/// The room that a home sheet is said to take, held against what Chromium makes of it: never less, and
/// not so much more that prose gives way for nothing.
/// </summary>
[Collection(BrowserTests.Name)]
public sealed class SheetRoomTests(BrowserFixture browser)
{
    /// <summary>In mm of a page.</summary>
    private const double MostTooMuch = 15;

    [Fact]
    public async Task No_home_sheet_is_higher_than_foretold_on_either_paper()
    {
        var papers = new PaperMaker(RealPages.Site);
        var page = await browser.OpenAsync(800, 900);
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        var (least, most) = (double.MaxValue, double.MinValue);
        foreach (var entry in RealPages.Collection.Entries)
        {
            var sheet = papers.Sheet(entry, RealPages.Prose[entry.Name]);
            await page.GotoAsync(browser.Site + sheet.Address);
            foreach (var room in new[] { SheetRoom.Of("A4"), SheetRoom.Of("Letter") })
            {
                var height = await HeightAsync(page, room.Page);
                var spare = room.Height(sheet.Shown!) - height;
                (least, most) = (Math.Min(least, spare), Math.Max(most, spare));
            }
        }
        Assert.True(least >= 0 && most <= MostTooMuch, $"Foretold is {least:0.0} to {most:0.0} mm too high.");
    }

    private static async Task<double> HeightAsync(IPage page, double width) => await page.EvaluateAsync<double>(
        """
        width => {
            const sheet = document.querySelector('.home-sheet');
            sheet.style.inlineSize = `${width}mm`;
            sheet.style.maxInlineSize = 'none';
            return sheet.getBoundingClientRect().height * 25.4 / 96;
        }
        """,
        width.ToString(CultureInfo.InvariantCulture));
}
