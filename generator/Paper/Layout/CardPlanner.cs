namespace CareSheets.Paper.Layout;

/// <summary>
/// Fits content to a card. First smaller type, the names' above all, down to the floor of the card's size;
/// then parts drop whole, the least important first. Nothing is ever set smaller, cut off or laid over.
/// </summary>
public sealed class CardPlanner
{
    private readonly PaperSize _card;
    private readonly CardContent _content;
    private readonly IReadOnlyList<CardType> _types;
    private readonly double _margin;

    private CardPlanner(PaperSize card, CardContent content)
    {
        (_card, _content, _types) = (card, content, CardType.For(card));
        _margin = CardType.MarginOf(card);
    }

    private double Width => _card.Width - (2 * _margin);

    private double Height => _card.Height - (2 * _margin);

    public static CardPlan Plan(PaperSize card, CardContent content) => new CardPlanner(card, content).Plan();

    private CardPlan Plan()
    {
        IReadOnlyList<ICardPart> shown = [.. Chosen()];
        return _types.Select(type => Lay(shown, type)).FirstOrDefault(plan => plan is { HasWholeNames: true })
            ?? Lay(shown, _types[^1])
            ?? throw new InvalidOperationException($"Not even names fit on {_card}.");
    }

    /// <summary>
    /// What finds room, tried in the tightest type, the most important first. What does not takes with it
    /// what stands behind it in the same place, so that no lesser caution is shown without a graver one;
    /// what belongs elsewhere may still use the room.
    /// </summary>
    private List<ICardPart> Chosen()
    {
        var shown = new List<ICardPart>();
        var full = new HashSet<CardPlace>();
        foreach (var part in _content.Parts.Where(p => p is not CodePart code || code.HasRoom(Width, Height)))
        {
            if (full.Contains(part.Place))
                continue;
            if (new[] { part, part.Shorter }.FirstOrDefault(p => p is not null && Fits([.. shown, p])) is { } fitting)
                shown.Add(fitting);
            else
                full.Add(part.Place);
        }
        return shown;
    }

    private bool Fits(IReadOnlyList<ICardPart> parts) => Lay(parts, _types[^1]) is not null;

    private CardPlan? Lay(IReadOnlyList<ICardPart> shown, CardType type)
    {
        var mark = ContentMark.Of(_content.Texts(shown));
        var flow = new CardFlow(Width, Height, type, _content, shown, mark);
        return flow.Lay() is not { } inks ? null : new CardPlan(
            _card, type, [.. inks.Select(i => i.Move(_margin, _margin))], mark,
            [.. _content.Parts.Where(p => !shown.Contains(p) && !shown.Contains(p.Shorter)).Select(p => p.Name)],
            !flow.CutsNames);
    }
}
