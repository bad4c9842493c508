namespace CareSheets.Paper.Layout;

/// <summary>
/// Fits content to a card. First smaller type, down to the floor of the card's size; then parts drop
/// from the end, whole, until the rest fits. Nothing is ever set smaller, cut off or laid over.
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
        var withoutCode = _content.Parts.Where(p => p is not CodePart).ToList();
        if (_content.Parts.OfType<CodePart>().FirstOrDefault() is not { } code || !code.HasRoom(Width, Height))
            return Fit(withoutCode);
        // A code that finds no room must not push out what is less important and does.
        var plan = Fit(_content.Parts);
        return plan.Dropped.Contains(code.Name) ? Fit(withoutCode) : plan;
    }

    private CardPlan Fit(IReadOnlyList<ICardPart> parts)
    {
        for (var kept = parts.Count; kept >= 0; kept--)
        {
            // In the tightest type first: what does not fit there fits in none, and drops.
            IReadOnlyList<ICardPart> shown = [.. parts.Take(kept)];
            if (Lay(shown, _types[^1]) is { } tight)
                return _types.Select(type => Lay(shown, type))
                    .FirstOrDefault(plan => plan is { HasWholeNames: true }) ?? tight;
        }
        throw new InvalidOperationException($"Not even names fit on {_card}.");
    }

    private CardPlan? Lay(IReadOnlyList<ICardPart> shown, CardType type)
    {
        var mark = ContentMark.Of(_content.Texts(shown));
        var flow = new CardFlow(Width, Height, type, _content, shown, mark);
        return flow.Lay() is not { } inks ? null : new CardPlan(
            _card, type, [.. inks.Select(i => i.Move(_margin, _margin))], mark,
            [.. _content.Parts.Except(shown).Select(p => p.Name)], !flow.CutsNames);
    }
}
