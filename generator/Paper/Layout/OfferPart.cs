namespace CareSheets.Paper.Layout;

/// <summary>
/// What a shop asks for one fish, large, and in smaller type behind it of what kind and how many; under both the
/// day from which they are sold, for a price alone would be read as an offer of today.
/// </summary>
public sealed record OfferPart(string Name, string Price, string Kind, string Release) : ICardPart
{
    private const double Larger = 1.6;

    public CardPlace Place => CardPlace.Foot;

    public IEnumerable<string> Texts => new[] { Price, Kind, Release }.Where(t => t.Length > 0);

    public Block Lay(double width, CardType type) =>
        LayPrice(width, type).Above(Paragraph.Lay(Release, Face.Bold, type.Body, width));

    private Block LayPrice(double width, CardType type)
    {
        var price = Paragraph.Lay(Price, Face.Bold, type.Body * Larger, width);
        var kind = Paragraph.Lay(Kind, Face.Plain, type.Floor, width);
        if (price.Inks.Count == 0 || kind.Inks is not [InkText line])
            return price.Above(kind);
        var last = (InkText)price.Inks[^1];
        var at = last.Width + (last.Size * 0.35);
        return at + line.Width <= width
            ? price with { Inks = [.. price.Inks, line with { X = at, Y = last.Y }] }
            : price.Above(kind);
    }
}
