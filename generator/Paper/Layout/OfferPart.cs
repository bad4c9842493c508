namespace CareSheets.Paper.Layout;

/// <summary>What a shop asks for one fish, large, and how many it has, in a smaller type behind it.</summary>
public sealed record OfferPart(string Name, string Price, string Count) : ICardPart
{
    private const double Larger = 1.6;

    public CardPlace Place => CardPlace.Foot;

    public IEnumerable<string> Texts => new[] { Price, Count }.Where(t => t.Length > 0);

    public Block Lay(double width, CardType type)
    {
        var price = Paragraph.Lay(Price, Face.Bold, type.Body * Larger, width);
        var count = Paragraph.Lay(Count, Face.Plain, type.Floor, width);
        if (price.Inks.Count == 0 || count.Inks is not [InkText line])
            return price.Above(count);
        var last = (InkText)price.Inks[^1];
        var at = last.Width + (last.Size * 0.35);
        return at + line.Width <= width
            ? price with { Inks = [.. price.Inks, line with { X = at, Y = last.Y }] }
            : price.Above(count);
    }
}
