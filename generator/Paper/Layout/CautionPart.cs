namespace CareSheets.Paper.Layout;

/// <summary>What to take care of, behind the theme's sign for it: a stone in the stream.</summary>
public sealed record CautionPart(string Name, string Text) : ICardPart
{
    private const string Stone = "M0 1A1 1 0 0 1 2 1Z";

    public CardPlace Place => CardPlace.Cautions;

    public IEnumerable<string> Texts => [Text];

    public Block Lay(double width, CardType type)
    {
        var em = Points.ToMillimetres(type.Body);
        var indent = em * 1.05;
        var text = Paragraph.Lay(Text, Face.Plain, type.Body, width - indent);
        var half = em * 0.33;
        return text with
        {
            Inks =
            [
                new InkShape(0, (Paragraph.Ascent * em) - half, half, half, Stone, ""),
                .. text.At(indent, 0),
            ],
        };
    }
}
