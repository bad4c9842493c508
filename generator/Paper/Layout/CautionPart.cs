namespace CareSheets.Paper.Layout;

/// <summary>
/// What to take care of, behind the theme's sign for it: a stone in the stream. The gravest stands bold
/// behind a bar as high as itself, which is seen from a metre and outlives any copier.
/// </summary>
public sealed record CautionPart(string Name, string Text, bool IsGravest = false) : ICardPart
{
    private const string Stone = "M0 1A1 1 0 0 1 2 1Z";
    private const double Indent = 1.05;
    private const double Bar = 0.4;

    public CardPlace Place => CardPlace.Cautions;

    public IEnumerable<string> Texts => [Text];

    public Block Lay(double width, CardType type)
    {
        var em = Points.ToMillimetres(type.Body);
        var face = IsGravest && type.IsForAfar ? Face.Bold : Face.Plain;
        var text = Paragraph.Lay(Text, face, type.Body, width - (Indent * em));
        return text with { Inks = [Sign(em, text.Height), .. text.At(Indent * em, 0)] };
    }

    private Ink Sign(double em, double height)
    {
        if (IsGravest)
            return new InkBox(0, 0.1 * em, Bar * em, height - (0.2 * em));
        var half = em * 0.36;
        return new InkShape(0, (Paragraph.Ascent * em) - half, half, half, Stone, "");
    }
}
