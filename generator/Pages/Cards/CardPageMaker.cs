using System.Globalization;
using CareSheets.Paper;
using CareSheets.Paper.Layout;
using CareSheets.Species;

namespace CareSheets.Pages.Cards;

/// <summary>Makes pages of tank cards: each alone for the site, and chosen ones together to print.</summary>
internal sealed class CardPageMaker(Site site)
{
    private readonly CardContentMaker _content = new(site);

    private Words Words => site.Words;

    public CardPlan Plan(Entry entry, PaperSize size, CardOffer? offer = null) =>
        CardPlanner.Plan(size, _content.Make(entry, offer));

    /// <summary>For the site, in the shop's size.</summary>
    public TankCard Make(Entry entry)
    {
        var (address, size) = (Routes.TankCard(entry), site.Collection.Store.Cards.Size);
        var plan = Plan(entry, size);
        var title = Words.Say("sentence.card_title", ("vernacular", entry.VernacularName));
        return new TankCard
        {
            Address = address,
            Frame = site.Frames.Make(address, title, title, isListed: false),
            StyleHref = Routes.Between(address, Routes.CardStyle),
            Leaf = LeafMaker.Make(Imposition.Of(size, null)!, [plan])[0],
            Plan = plan,
            Entry = entry,
            Dropped = Dropped(plan),
            PageHref = Routes.Between(address, Routes.Species(entry)),
        };
    }

    /// <summary>To print, on their sheets.</summary>
    public CardLeaves Make(
        string address, string style, Imposition imposition, IReadOnlyList<(Entry Entry, CardPlan Plan)> cards)
    {
        var title = Words["card.leaves_title"];
        var leaves = LeafMaker.Make(imposition, [.. cards.Select(c => c.Plan)]);
        return new CardLeaves
        {
            Address = address,
            Frame = site.Frames.Make(address, title, title, isListed: false),
            StyleHref = style,
            Lead = Words.Say("card.leaves_lead",
                ("cards", Words.Count("card.cards", cards.Count)),
                ("sheets", Words.Count("card.sheets", leaves.Count))),
            Notes =
            [
                .. cards.Where(c => c.Plan.Dropped.Count > 0)
                    .Select(c => $"{c.Entry.VernacularName}: {Dropped(c.Plan)}"),
            ],
            Leaves = leaves,
        };
    }

    public string Dropped(CardPlan plan) => plan.Dropped.Count == 0 ? ""
        : Words.Say("card.dropped", ("parts", string.Join(Words["sentence.list_separator"], plan.Dropped)));

    /// <summary>The style sheet that makes each printed page as large as the paper, with no margin.</summary>
    public static string Style(PaperSize paper)
    {
        static string Text(double side) => side.ToString("0.###", CultureInfo.InvariantCulture);
        return $"@page leaf {{ size: {Text(paper.Width)}mm {Text(paper.Height)}mm; margin: 0; }}\n";
    }
}
