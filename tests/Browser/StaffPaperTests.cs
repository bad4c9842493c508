using CareSheets.Tests.Support;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace CareSheets.Tests.Browser;

/// <summary>Every docket and all talking notes, printed: as many pages as they need, and nothing lost.</summary>
[Collection(BrowserTests.Name)]
public sealed class StaffPaperTests(BrowserFixture browser)
{
    private const double PointsPerMillimetre = 72 / 25.4;
    private const int TextWidth = 718; // 190 mm of A4 within its margins, at 96 px an inch

    public static TheoryData<string, bool> Papers()
    {
        var papers = RealSite.Pages.Keys.Where(a => a.StartsWith("papers/docket-", StringComparison.Ordinal) ||
            a.StartsWith("papers/notes-", StringComparison.Ordinal)).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(6, papers.Count);
        var data = new TheoryData<string, bool>();
        foreach (var paper in papers)
        {
            data.Add(paper, false);
            data.Add(paper, true);
        }
        return data;
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task A_staff_paper_prints_whole_on_either_paper(string address, bool onLetter)
    {
        var page = await browser.OpenAsync(TextWidth, 900);
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await page.GotoAsync(browser.Site + address);
        Assert.Empty(await page.EvaluateAsync<string[]>(PrintedPaper.Overflowing));
        if (onLetter)
            await page.EvaluateAsync(
                "document.querySelector('.paper').classList.replace('paper--a4', 'paper--letter')");
        using var pdf = PdfDocument.Open(await PrintedPaper.PrintAsync(page));
        var (width, height) = onLetter ? (215.9, 279.4) : (210.0, 297.0);
        Assert.InRange(pdf.NumberOfPages, 1, 6);
        Assert.All(pdf.GetPages(), p =>
        {
            Assert.Equal((width * PointsPerMillimetre, height * PointsPerMillimetre), (p.Width, p.Height), OnePoint);
            Assert.True(p.Letters.Where(l => l.Value.Trim().Length > 0).Min(l => l.PointSize) >= 8.9);
        });
        var printed = Bare(string.Concat(pdf.GetPages().Select(p => p.Text)));
        var texts = RealSite.Pages[address].QuerySelectorAll("h1, h2, h3, dd, .caution-list__item, .talk__telling")
            .Select(e => Bare(e.TextContent)).ToList();
        Assert.True(texts.Count > 20);
        Assert.All(texts, t => Assert.Contains(t, printed, StringComparison.OrdinalIgnoreCase));
        await page.Context.CloseAsync();
    }

    private static bool OnePoint((double W, double H) one, (double W, double H) other) =>
        Math.Abs(one.W - other.W) <= 1 && Math.Abs(one.H - other.H) <= 1;

    /// <summary>Lines end where they like, and the dot before a note comes from the style sheet.</summary>
    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c) && c != '·'));
}
