using System.Text;
using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Pages;
using CareSheets.Pages.Cards;
using CareSheets.Paper;
using CareSheets.Publishing;
using CareSheets.Rendering;

namespace CareSheets.Commands;

/// <summary>Chosen cards as documents for the printer, one for each size of card.</summary>
internal sealed class CardSheets(Site site, Workbench bench, CardsSettings settings)
{
    private readonly List<SiteFile> _files = [];

    /// <summary>Addresses of the documents, in the folder that they are written to.</summary>
    public IReadOnlyList<string> Documents { get; private set; } = [];

    public int Sheets { get; private set; }

    /// <summary>False when something stands in the way; then the bag says what.</summary>
    public bool Write(IReadOnlyList<ChosenCard> cards, PaperSize? sheet)
    {
        var renderer = new PageRenderer(Theme.Read(settings.Theme, bench.Bag), site.Words);
        var documents = new List<string>();
        foreach (var size in cards.GroupBy(c => c.Job.Size))
        {
            if (Imposition.Of(size.Key, sheet) is not { } imposition)
            {
                bench.Bag.Add(CardCodes.LargerThanSheet, SourceSpan.None,
                    ("size", PaperSizeText.Of(size.Key)), ("sheet", PaperSizeText.Of(sheet!.Value)));
                return false;
            }
            documents.Add(Add($"tank-cards-{Slug.From(PaperSizeText.Of(size.Key))}", imposition, [.. size], renderer));
        }
        Documents = documents;
        bench.Bag.Add(site.Words.Missing);
        var assets = ThemeAssets.Read(settings.Theme, bench.Bag)
            .Where(a => a.Address == "site.css");
        return !bench.Bag.HasErrors &&
            new SiteWriter(settings.Into, bench.Bag).Write([.. _files, .. assets], SiteCheck.Check) is not null;
    }

    private string Add(
        string name, Imposition imposition, IReadOnlyList<ChosenCard> cards, PageRenderer renderer)
    {
        var page = new CardPageMaker(site).Make(
            $"{name}.html", $"{name}.css", imposition, [.. cards.Select(c => (c.Job.Entry, c.Plan))]);
        Sheets += page.Leaves.Count;
        AddFile(page.Address, renderer.Render(page, bench.Bag) ?? "");
        AddFile(page.StyleHref, CardPageMaker.Style(imposition.Sheet));
        return page.Address;
    }

    private void AddFile(string address, string text) =>
        _files.Add(new SiteFile(address, Encoding.UTF8.GetBytes(text)));
}
