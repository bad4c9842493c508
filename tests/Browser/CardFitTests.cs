using System.Text.Json;
using CareSheets.Pages.Cards;
using CareSheets.Paper;
using CareSheets.Paper.Layout;
using CareSheets.Tests.Support;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using IPage = Microsoft.Playwright.IPage;

namespace CareSheets.Tests.Browser;

/// <summary>
/// Every card of the collection in every size, and made-up extremes, in Chromium: each line as wide as it
/// was measured, nothing beyond the card's margin, nothing over anything else, as many pages as planned.
/// </summary>
[Collection(BrowserTests.Name)]
public sealed class CardFitTests(BrowserFixture browser)
{
    public static TheoryData<string> Sizes() =>
    [
        "A6", "A6 landscape", "A7", "A7 landscape", "4x6 in", "6x4 in", "90x55 mm", "55x90 mm", "100x70 mm", "50x40 mm",
        "200x140 mm",
    ];

    /// <summary>Boxes of all ink in mm of its card, and how far each line is from its measured width.</summary>
    private const string Look = """
        () => JSON.stringify([...document.querySelectorAll('.card')].map(card => {
            const sheet = card.ownerSVGElement, all = sheet.getBoundingClientRect();
            const mm = all.width / sheet.viewBox.baseVal.width;
            const own = { left: all.left + card.x.baseVal.value * mm, top: all.top + card.y.baseVal.value * mm };
            const box = e => { const b = e.getBoundingClientRect();
                return [(b.left - own.left) / mm, (b.top - own.top) / mm,
                    (b.right - own.left) / mm, (b.bottom - own.top) / mm]; };
            const lines = [...card.querySelectorAll('text')];
            return {
                texts: lines.map(e => ({
                    box: box(e), size: parseFloat(e.getAttribute('font-size')), text: e.textContent })),
                shapes: [...card.querySelectorAll('path, rect')].map(box),
                wide: [...card.querySelectorAll('path, rect')].map(e => e.getAttribute('aria-label') ?? ''),
                natural: lines.map(e => { const set = e.getAttribute('textLength'); e.removeAttribute('textLength');
                    const free = e.getComputedTextLength(); if (set) e.setAttribute('textLength', set);
                    return set ? free / parseFloat(set) : 1; }),
            };
        }))
        """;

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task Every_card_of_the_collection_fits(string size)
    {
        var paper = PaperSizeText.Read(size)!.Value;
        var maker = new CardPageMaker(RealPages.Site);
        List<CardPlan> cards = [.. RealPages.Collection.Entries.Select(e => maker.Plan(e, paper))];
        Assert.All(cards, c => Assert.True(c.HasWholeNames || paper.Width < 60, "A name is cut."));
        await AssertFitAsync(paper, cards);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task Made_up_extremes_fit(string size)
    {
        var paper = PaperSizeText.Read(size)!.Value;
        var longest = string.Concat(Enumerable.Repeat("Unbreakablylongnamed", 8));
        await AssertFitAsync(paper,
        [
            CardPlanner.Plan(paper, CardPrint.Extreme("Ill", 0)),
            CardPlanner.Plan(paper, CardPrint.Extreme("Greater blue-eyed spotted threadfin dwarf pencilfish", 9)),
            CardPlanner.Plan(paper, CardPrint.Extreme(longest, 9, longest + " " + longest)),
            CardPlanner.Plan(paper, CardPrint.Extreme(string.Join(' ', Enumerable.Repeat("fish", 90)), 3)),
            CardPlanner.Plan(paper, CardPrint.Extreme("<b>&amp;</b> \"quoted\" 漢字 🐟 Ζέβρα ‮abc", 3)),
        ]);
    }

    [Fact]
    public async Task Lines_keep_their_measured_width_where_other_fonts_step_in()
    {
        const string other = ".card__text { font-family: 'DejaVu Sans', monospace; }";
        var maker = new CardPageMaker(RealPages.Site);
        await AssertFitAsync(
            PaperSize.A7, [.. RealPages.Collection.Entries.Take(30).Select(e => maker.Plan(e, PaperSize.A7))], other);
    }

    [Fact]
    public async Task Letters_are_as_wide_here_as_the_program_measures()
    {
        var maker = new CardPageMaker(RealPages.Site);
        using var print = new CardPrint();
        var page = await browser.OpenAsync();
        await page.GotoAsync(print.Write(Imposition.Of(PaperSize.A6, null)!,
            [.. RealPages.Collection.Entries.Select(e => maker.Plan(e, PaperSize.A6))]));
        var ratios = (await LookAsync(page)).SelectMany(c => c.Natural).ToList();
        Assert.True(ratios.Count > 2000);
        Assert.All(ratios, r => Assert.InRange(r, 0.93, 1.011)); // pairs such as AV and To are moved together
    }

    [Fact]
    public async Task A_card_with_too_much_on_it_is_noticed()
    {
        var plan = new CardPageMaker(RealPages.Site).Plan(RealPages.Collection.Entries[0], PaperSize.A6);
        var moved = plan with { Inks = [.. plan.Inks.Select((ink, i) => i == 3 ? ink.Move(40, 4) : ink)] };
        Assert.NotEmpty(await FaultsAsync(PaperSize.A6, [moved], ""));
        Assert.Empty(await FaultsAsync(PaperSize.A6, [plan], ""));
    }

    private async Task AssertFitAsync(PaperSize paper, IReadOnlyList<CardPlan> cards, string more = "")
    {
        var faults = await FaultsAsync(paper, cards, more);
        Assert.True(faults.Count == 0, string.Join('\n', faults.Take(20)));
    }

    private async Task<IReadOnlyList<string>> FaultsAsync(PaperSize paper, IReadOnlyList<CardPlan> cards, string more)
    {
        using var print = new CardPrint();
        var page = await browser.OpenAsync();
        await page.GotoAsync(print.Write(Imposition.Of(paper, null)!, cards, more));
        var looked = await LookAsync(page);
        Assert.Equal(cards.Count, looked.Length);
        var faults = looked.SelectMany((card, i) => CardFaults.Of(card, paper, i)).ToList();
        faults.AddRange(PrintFaults(await PrintedPaper.PrintAsync(page), paper, cards));
        await page.Context.CloseAsync();
        return faults;
    }

    private static async Task<Looked[]> LookAsync(IPage page) => JsonSerializer.Deserialize<Looked[]>(
        await page.EvaluateAsync<string>(Look), JsonSerializerOptions.Web)!;

    private static IEnumerable<string> PrintFaults(byte[] pdf, PaperSize paper, IReadOnlyList<CardPlan> cards)
    {
        using var document = PdfDocument.Open(pdf);
        if (document.NumberOfPages != cards.Count)
            yield return $"{document.NumberOfPages} pages for {cards.Count} cards";
        foreach (var (page, card) in document.GetPages().Zip(cards))
        {
            var (width, height) = (page.Width * 25.4 / 72, page.Height * 25.4 / 72);
            if (Math.Abs(width - paper.Width) > 0.4 || Math.Abs(height - paper.Height) > 0.4)
                yield return $"a page of {width:0.0} x {height:0.0} mm";
            if (!page.Text.Replace(" ", "", StringComparison.Ordinal).Contains(card.Mark, StringComparison.Ordinal))
                yield return $"page {page.Number} lacks the mark {card.Mark}";
            var least = page.Letters.Where(l => l.Value.Trim().Length > 0).Min(l => l.PointSize);
            if (least < CardType.FloorOf(paper) - 0.1)
                yield return $"letters of {least:0.0} pt";
            foreach (var font in page.Letters.Select(l => l.FontName ?? "").Distinct()
                .Where(f => !f.Contains('+') && f != PrintedPaper.DrawnFont))
                yield return $"the font {font} is not embedded";
        }
    }
}

/// <summary>A line of a card as Chromium sets it, its box in mm of the card.</summary>
internal sealed record LookedText(double[] Box, double Size, string Text);

/// <summary>A card as Chromium sets it.</summary>
internal sealed record Looked(LookedText[] Texts, double[][] Shapes, string[] Wide, double[] Natural);
