using System.Text.RegularExpressions;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace CareSheets.Tests.Browser;

/// <summary>A paper as a PDF, and what is wrong with it.</summary>
internal static partial class PrintedPaper
{
    private const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>Elements of the paper whose content is larger than their box.</summary>
    public const string Overflowing = """
        () => [...document.querySelectorAll('.paper, .paper *')]
            .filter(e => e.clientWidth > 0 && (e.scrollWidth > e.clientWidth
                || (e.scrollHeight > e.clientHeight && e.matches('.paper'))))
            .map(e => `${e.className || e.tagName} holds ${e.scrollWidth}x${e.scrollHeight} px`
                + ` in ${e.clientWidth}x${e.clientHeight}`)
        """;

    /// <summary>
    /// What the reader calls a font whose letters are drawings within the file (ISO 32000-1:2008, 9.6.5): Chromium
    /// makes one of a font that it may or can not embed, such as a Type 1 font of the machine.
    /// </summary>
    public const string DrawnFont = "Type3";

    public static Task<byte[]> PrintAsync(IPage page) =>
        page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true, PrintBackground = true });

    /// <summary>Faults in size, count, texts, fonts and margins; none when all is well.</summary>
    /// <param name="pdf">The printed paper.</param>
    /// <param name="size">The paper it must be on.</param>
    /// <param name="texts">What must be on it, whatever its letters' case.</param>
    public static IEnumerable<string> Faults(byte[] pdf, PrinterPaper size, IEnumerable<string> texts)
    {
        using var document = PdfDocument.Open(pdf);
        if (document.NumberOfPages != 1)
            yield return $"{document.NumberOfPages} pages";
        var page = document.GetPage(1);
        var (width, height) = (size.Width * PointsPerMillimetre, size.Height * PointsPerMillimetre);
        if (Math.Abs(page.Width - width) > 1 || Math.Abs(page.Height - height) > 1)
            yield return $"{page.Width:0.0} x {page.Height:0.0} pt instead of {width:0.0} x {height:0.0}";
        var printed = Bare(page.Text);
        foreach (var text in texts.Where(t => !printed.Contains(Bare(t), StringComparison.OrdinalIgnoreCase)))
            yield return $"“{text}” is missing";
        var fonts = page.Letters.Select(l => l.FontName ?? "").Distinct();
        foreach (var font in fonts.Where(f => !Subset().IsMatch(f) && f != DrawnFont))
            yield return $"the font {font} is not embedded";
        foreach (var word in page.GetWords().Where(w => IsOutside(w, page, size.Margin * PointsPerMillimetre)))
            yield return $"“{word.Text}” stands in the margin";
        // Less than 9 pt is too small; a page too wide shows here too, for Chromium shrinks it by up to a third.
        if (page.Letters.Where(l => l.Value.Trim().Length > 0).Min(l => l.PointSize) is var least and < 8.9)
            yield return $"letters of {least:0.0} pt";
    }

    /// <summary>Chromium rounds the room between margins up to a whole pixel of 0.75 pt, and the page down.</summary>
    private static bool IsOutside(Word word, Page page, double margin) =>
        word.BoundingBox.Left < margin - 1 || word.BoundingBox.Right > page.Width - margin + 1.5 ||
        word.BoundingBox.Bottom < margin - 2 || word.BoundingBox.Top > page.Height - margin + 1;

    /// <summary>Line ends fall where they like: all white space is left out.</summary>
    private static string Bare(string text) => Space().Replace(text, "");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();

    /// <summary>Six capitals and a plus sign name an embedded subset (ISO 32000-1:2008, 9.6.4).</summary>
    [GeneratedRegex(@"^[A-Z]{6}\+")]
    private static partial Regex Subset();
}
