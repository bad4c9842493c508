namespace CareSheets.Paper.Layout;

/// <summary>What a card has to show.</summary>
/// <param name="Parts">The most important first: what finds no room drops, the least important first.</param>
/// <param name="Foot">The shop and the day, which every card carries with its mark.</param>
public sealed record CardContent(HeadPart Head, IReadOnlyList<ICardPart> Parts, CardFoot Foot)
{
    /// <summary>All that a card with these parts says, for its mark.</summary>
    public IEnumerable<string> Texts(IReadOnlyList<ICardPart> shown) =>
    [
        .. Head.Texts, .. shown.SelectMany(p => p.Texts), Foot.Shop,
        .. new[] { More(shown) }.Where(t => t.Length > 0),
    ];

    /// <summary>That cautions found no room; empty when all did.</summary>
    public string More(IReadOnlyList<ICardPart> shown)
    {
        var left = Parts.OfType<CautionPart>().Count() - shown.OfType<CautionPart>().Count();
        return left == 0 ? "" : Foot.More(left);
    }
}

/// <param name="Shop">Whose card it is.</param>
/// <param name="Date">When the entry was last read through. Not part of the mark: a fresh look changes no fact.</param>
/// <param name="More">What is said of so many cautions that found no room, lest the others be taken for all.</param>
public sealed record CardFoot(string Shop, string Date, Func<int, string> More);
