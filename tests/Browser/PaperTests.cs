using System.Collections.Concurrent;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using CareSheets.Tests.Support;
using Microsoft.Playwright;

namespace CareSheets.Tests.Browser;

/// <summary>
/// Every home sheet of the content, printed: one page each, of the right size,
/// with nothing lost. The layout at the width of the paper's text is looked at too.
/// </summary>
[Collection(BrowserTests.Name)]
public sealed class PaperTests(BrowserFixture browser)
{
    private static readonly PrinterPaper A4 = new("A4", 210, 297, 10);
    private static readonly PrinterPaper A6 = new("A6", 105, 148, 20);
    private static readonly PrinterPaper Letter = new("Letter", 215.9, 279.4, 9);

    /// <summary>96 CSS px in 25.4 mm.</summary>
    private static int Pixels(double millimetres) => (int)(millimetres * 96 / 25.4);

    [Fact]
    public async Task Every_home_sheet_is_one_page_of_a4_with_all_that_matters() => AssertNone(
        await PrintAllAsync(browser.Site, RealSite.Folder, Pixels(190), A4));

    [Fact]
    public async Task Every_home_sheet_of_a_shop_with_letter_paper_is_one_page_of_that()
    {
        var folder = RealSite.MakeWith(content =>
        {
            var store = Path.Combine(content, "store.yaml");
            var text = File.ReadAllText(store);
            Assert.Contains("paper: A4", text, StringComparison.Ordinal);
            File.WriteAllText(store, text.Replace("paper: A4", "paper: Letter", StringComparison.Ordinal));
        });
        using var server = new SiteServer(folder);
        AssertNone(await PrintAllAsync(server.Address, folder, Pixels(197.9), Letter));
    }

    [Fact]
    public async Task A_paper_with_too_much_on_it_is_noticed()
    {
        var page = await browser.OpenAsync(Pixels(190), 600);
        await page.GotoAsync(browser.Site + "papers/sheet-danio-rerio.html");
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await page.EvaluateAsync("""
            document.querySelector('.home-sheet__name').textContent = 'Unbreakably'.repeat(40);
            document.querySelector('.home-sheet__name').style.overflowWrap = 'normal';
            document.querySelector('.home-sheet__scientific').style.fontSize = '6pt';
            document.querySelector('.home-sheet__foot').textContent = 'word '.repeat(4000);
            """);
        Assert.NotEmpty(await page.EvaluateAsync<string[]>(PrintedPaper.Overflowing));
        var faults = PrintedPaper.Faults(await PrintedPaper.PrintAsync(page), A6, ["no such text"]).ToList();
        Assert.Contains(faults, f => f.EndsWith(" pages", StringComparison.Ordinal));
        Assert.Contains(faults, f => f.Contains("instead of", StringComparison.Ordinal));
        Assert.Contains("“no such text” is missing", faults);
        // Smaller than its 6 pt, for a word that is too wide shrinks the page.
        Assert.Contains(faults, f => f.StartsWith("letters of 4.", StringComparison.Ordinal));
        Assert.Contains(faults, f => f.EndsWith("in the margin", StringComparison.Ordinal));
    }

    private async Task<IReadOnlyList<string>> PrintAllAsync(string site, string folder, int width, PrinterPaper size)
    {
        var left = new ConcurrentQueue<string>(RealSite.Entries.Select(name => $"papers/sheet-{name}.html"));
        Assert.True(left.Count >= 20, $"Only {left.Count} papers were found.");
        var faults = new ConcurrentBag<string>();
        await Task.WhenAll(Enumerable.Range(0, 2).Select(async _ =>
        {
            var page = await browser.OpenAsync(width, 900);
            await page.EmulateMediaAsync(new() { Media = Media.Print });
            while (left.TryDequeue(out var address))
            {
                await page.GotoAsync(site + address);
                var sheet = new HtmlParser().ParseDocument(await File.ReadAllTextAsync(Path.Combine(folder, address)));
                foreach (var fault in await FaultsAsync(page, size, Texts(sheet)))
                    faults.Add($"{address}: {fault}");
            }
            await page.Context.CloseAsync();
        }));
        return [.. faults.Order(StringComparer.Ordinal)];
    }

    private static IEnumerable<string> Texts(IDocument sheet) =>
    [
        Text(sheet, "h1"), Text(sheet, "i[lang=la]"), Last(sheet, ".caution-list__item"),
        Last(sheet, ".home-sheet__prose p"), Last(sheet, ".fact-list__fact dd"), Text(sheet, ".home-sheet__address"),
        Last(sheet, ".home-sheet__safety"),
    ];

    private static async Task<IEnumerable<string>> FaultsAsync(IPage page, PrinterPaper size, IEnumerable<string> texts)
    {
        var faults = await page.EvaluateAsync<string[]>(PrintedPaper.Overflowing);
        return faults.Concat(PrintedPaper.Faults(await PrintedPaper.PrintAsync(page), size, texts));
    }

    private static void AssertNone(IReadOnlyList<string> faults) =>
        Assert.True(faults.Count == 0, string.Join('\n', faults));

    private static string Text(IDocument paper, string selector) => paper.QuerySelector(selector)?.TextContent
        ?? throw new InvalidOperationException($"{paper.Title} has no {selector}");

    /// <summary>The text of the last such element; nothing to look for where an entry has none.</summary>
    private static string Last(IDocument paper, string selector) =>
        paper.QuerySelectorAll(selector) is [.., var last] ? last.TextContent : "";
}
