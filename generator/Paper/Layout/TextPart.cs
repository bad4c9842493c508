namespace CareSheets.Paper.Layout;

/// <summary>A text on its own: where the fish is from, that its figures are estimates.</summary>
public sealed record TextPart(CardPlace Place, string Name, string Text) : ICardPart
{
    public IEnumerable<string> Texts => [Text];

    public Block Lay(double width, CardType type) => Paragraph.Lay(Text, Face.Plain, type.Body, width);
}
