using System.Diagnostics;
using CareSheets.Commands;
using CareSheets.Pages.Cards;
using CareSheets.Paper;
using CareSheets.Paper.Layout;
using CareSheets.Tests.Support;
using UglyToad.PdfPig;

namespace CareSheets.Tests.Browser;

/// <summary>
/// Sheets of cards as <c>cards --pdf</c> prints them: the paper's exact size, fonts within, text that can be
/// searched, and codes that a phone reads: from the page at 300 dpi, and from black and white at 150 dpi.
/// </summary>
public sealed class PrintedCardTests
{
    [Theory]
    [InlineData("A6", 300, "-gray", 0)]
    [InlineData("A6", 150, "-mono", 0)]
    [InlineData("A7", 300, "-gray", 0)]
    [InlineData("A7", 150, "-mono", 0)]
    [InlineData("A7 landscape", 150, "-mono", 0)]
    [InlineData("90x55 mm", 300, "-gray", 0)]
    [InlineData("90x55 mm", 150, "-mono", 0)]
    [InlineData("55x90 mm", 150, "-mono", 0)]
    [InlineData("A6", 300, "-gray", 2)]
    [InlineData("A7 landscape", 300, "-gray", 2)]
    [InlineData("90x55 mm", 300, "-gray", 2)]
    public void Every_code_on_a_sheet_is_read_and_leads_to_its_species(
        string size, int dpi, string colours, int copies)
    {
        var paper = PaperSizeText.Read(size)!.Value;
        var maker = new CardPageMaker(RealPages.Site);
        var imposition = Imposition.Of(paper, PaperSize.A4)!;
        var cards = RealPages.Collection.Entries.Take(imposition.Count * 2)
            .Select(e => (Entry: e, Plan: maker.Plan(e, paper))).ToList();
        using var print = new CardPrint();
        var pdf = Print(print, imposition, [.. cards.Select(c => c.Plan)]);
        var address = RealPages.Collection.Store.Address;
        var expected = cards.Where(c => c.Plan.Dropped.All(d => d != "QR code"))
            .Select(c => $"{address}species/{c.Entry.Name}.html").ToList();
        Assert.NotEmpty(expected);
        var pages = Rendered(print, pdf, dpi, colours);
        for (var copy = 0; copy < copies; copy++)
            pages = [.. pages.Select(p => p.Copied())];
        Assert.Equal(2, pages.Count);
        var read = pages.SelectMany(page => CodesOf(page, imposition, colours == "-mono" ? 3 * dpi : dpi)).ToList();
        Assert.Equal(expected, read);
    }

    [Fact]
    public void Something_that_is_no_code_is_not_read_as_one()
    {
        var white = new GreyImage(300, 300, [.. Enumerable.Repeat((byte)255, 90000)]);
        Assert.Null(white.Decode(0, 0, 300, 300));
    }

    [Fact]
    public void A_sheet_is_a4_with_its_fonts_and_every_name()
    {
        var maker = new CardPageMaker(RealPages.Site);
        var imposition = Imposition.Of(PaperSize.A6, PaperSize.A4)!;
        using var print = new CardPrint();
        var entries = RealPages.Collection.Entries.Take(8).ToList();
        var pdf = Print(print, imposition, [.. entries.Select(e => maker.Plan(e, PaperSize.A6))]);
        using var document = PdfDocument.Open(pdf);
        Assert.Equal(2, document.NumberOfPages);
        foreach (var (page, number) in document.GetPages().Select((p, i) => (p, i)))
        {
            Assert.Equal((595.0, 842.0), (Math.Round(page.Width), Math.Round(page.Height)));
            Assert.All(page.Letters.Select(l => l.FontName), font => Assert.Matches(@"^[A-Z]{6}\+", font));
            Assert.All(entries.Skip(4 * number).Take(4), entry =>
                Assert.Contains(
                    entry.ScientificName.Value.ToString().Replace(" ", "", StringComparison.Ordinal),
                    page.Text.Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal));
        }
    }

    private static string Print(CardPrint print, Imposition imposition, IReadOnlyList<CardPlan> cards)
    {
        print.Write(imposition, cards);
        var pdf = Path.Combine(print.Folder, "cards.pdf");
        var failure = new PdfPrinter(Chromium.Find(Chromium.Places))
            .Print(Path.Combine(print.Folder, "cards.html"), pdf);
        Assert.True(failure is null, failure);
        return pdf;
    }

    /// <summary>
    /// Poppler's pdftoppm, which tests/run installs; -mono gives black dots on white and nothing between. What
    /// is printed so is then looked at three times as closely, as any camera does.
    /// </summary>
    private static List<GreyImage> Rendered(CardPrint print, string pdf, int dpi, string colours)
    {
        using var process = Process.Start(new ProcessStartInfo(
            "pdftoppm", ["-r", $"{dpi}", colours, pdf, Path.Combine(print.Folder, "page")]))!;
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
        return [.. Directory.GetFiles(print.Folder, "page*").Order(StringComparer.Ordinal)
            .Select(file => GreyImage.Read(file).Larger(colours == "-mono" ? 3 : 1))];
    }

    private static IEnumerable<string> CodesOf(GreyImage page, Imposition imposition, int dpi)
    {
        int Pixels(double millimetres) => (int)Math.Round(millimetres * dpi / 25.4);
        for (var i = 0; i < imposition.Count; i++)
        {
            var (x, y) = imposition.Place(i);
            var (width, height) = (imposition.Card.Width, imposition.Card.Height);
            // As a phone held over the card's lower right sees it.
            var side = Math.Min(width, Math.Min(height, 34));
            var text = page.Decode(
                Pixels(x + width - side), Pixels(y + height - side), Pixels(side), Pixels(side));
            if (text is not null)
                yield return text;
        }
    }
}
