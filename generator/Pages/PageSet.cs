using CareSheets.Pages.Cards;
using CareSheets.Pages.Mates;
using CareSheets.Pages.Stock;
using CareSheets.Tankmates;

namespace CareSheets.Pages;

/// <summary>All pages and papers of the site, as values.</summary>
public static class PageSet
{
    /// <param name="site">The collection with words and units.</param>
    /// <param name="mates">Every pair of species judged.</param>
    /// <param name="prose">The prose of each entry as markup, by the entry's name.</param>
    public static IReadOnlyList<IPage> Make(
        Site site, Acquaintances mates, IReadOnlyDictionary<string, SpeciesProse> prose)
    {
        var species = new SpeciesPageMaker(site, mates);
        var papers = new PaperMaker(site);
        var cards = new CardPageMaker(site);
        var ofSpecies = site.Collection.Entries.AsParallel().AsOrdered().SelectMany(e => new IPage[]
        {
            species.Make(e, prose[e.Name].ForPage), papers.Sheet(e, prose[e.Name]), cards.Make(e),
        });
        return
        [
            .. new StandingPageMaker(site).Make(), .. new MatePageMaker(site).Make(), .. ofSpecies,
            .. new TaxonPageMaker(site).Make(), .. new OriginPageMaker(site).Make(),
            .. new StockPageSet(site).Make(),
        ];
    }
}

/// <summary>An entry's prose as markup: with links on the page, without them on paper.</summary>
public sealed record SpeciesProse(Html ForPage, Html ForPaper)
{
    /// <summary>The prose of paper in its paragraphs, for what has to fit.</summary>
    public required IReadOnlyList<PaperParagraph> Paragraphs { get; init; }
}

/// <param name="Markup">As it is printed.</param>
/// <param name="Text">The same without any marks, to be measured.</param>
public sealed record PaperParagraph(Html Markup, string Text);
