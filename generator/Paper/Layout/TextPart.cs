namespace CareSheets.Paper.Layout;

/// <summary>A text on its own: where the fish is from, what a shop asks for it.</summary>
public sealed record TextPart(CardPlace Place, string Name, string Text, bool IsLarge = false) : ICardPart
{
    private const double Larger = 1.6;

    public IEnumerable<string> Texts => [Text];

    public Block Lay(double width, CardType type) => IsLarge
        ? Paragraph.Lay(Text, Face.Bold, type.Body * Larger, width)
        : Paragraph.Lay(Text, Face.Plain, type.Body, width);
}
