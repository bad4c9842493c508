namespace CareSheets.Paper.Layout;

/// <summary>
/// What to take care of, behind the theme's sign for it: a stone in the stream. The gravest stands bold
/// behind a bar as high as itself, which is seen from a metre and outlives any copier.
/// </summary>
/// <param name="Runs">The text: plain, and Latin where it names a fish.</param>
public sealed record CautionPart(string Name, IReadOnlyList<TypeRun> Runs, bool IsGravest = false) : ICardPart
{
    private const string Stone = "M0 1A1 1 0 0 1 2 1Z";
    private const double Indent = 1.05;
    private const double Bar = 0.4;

    /// <summary>Of a text without scientific names.</summary>
    public CautionPart(string name, string text, bool isGravest = false)
        : this(name, [new TypeRun(text, Face.Plain)], isGravest)
    {
    }

    public CardPlace Place => CardPlace.Cautions;

    public IEnumerable<string> Texts => [string.Concat(Runs.Select(r => r.Text))];

    public Block Lay(double width, CardType type)
    {
        var em = Points.ToMillimetres(type.Body);
        var face = IsGravest && type.IsForAfar ? Face.Bold : Face.Plain;
        var text = Paragraph.Lay(
            [.. Runs.Select(r => r.Face == Face.Plain ? r with { Face = face } : r)], type.Body, width - (Indent * em));
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
