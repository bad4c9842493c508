namespace CareSheets.Paper.Layout;

/// <summary>A fact: its label, what it is, and a note in smaller type.</summary>
/// <param name="IsFigure">Whether it is read from a metre, almost as large as the figures of the water.</param>
public sealed record FactPart(
    CardPlace Place, string Label, string Value, string Note, bool IsFigure = false) : ICardPart
{
    private const double OfFigure = 0.85;

    /// <summary>Whether the value holds without the note, which then goes first where room is short.</summary>
    public bool HasSpareNote { get; init; }

    public string Name => Label;

    public ICardPart? Shorter => HasSpareNote && Note.Length > 0 ? this with { Note = "" } : null;

    public IEnumerable<string> Texts => [Label, Value, Note];

    /// <summary>Labels no wider than this share of the line, for the value matters more.</summary>
    public const double WidestLabel = 0.34;

    public Block Lay(double width, CardType type)
    {
        var labels = Math.Min(type.Labels, width * WidestLabel);
        var gap = Points.ToMillimetres(type.Body) * 0.5;
        var label = Paragraph.Lay(Label, Face.Plain, type.Floor, labels);
        var value = LayValue(width - labels - gap, type);
        var shift = (Points.ToMillimetres(Size(type)) - Points.ToMillimetres(type.Floor)) * Paragraph.Ascent;
        return new Block(
            Math.Max(label.Height + shift, value.Height), [.. label.At(0, shift), .. value.At(labels + gap, 0)]);
    }

    private double Size(CardType type) =>
        IsFigure && type.IsForAfar ? Math.Max(type.Body, type.Figure * OfFigure) : type.Body;

    /// <summary>The note follows on the line of the value where there is room.</summary>
    private Block LayValue(double width, CardType type)
    {
        var value = Paragraph.Lay(Value, Face.Bold, Size(type), width);
        if (Note.Length == 0)
            return value;
        var last = (InkText)value.Inks[^1];
        var noteAt = last.Width + (last.Size * 0.35);
        var size = Points.ToMillimetres(type.Floor);
        if (noteAt + FaceWidths.Of(Note, Face.Plain, size) <= width)
            return value with { Inks = [.. value.Inks, new InkText(noteAt, last.Y, size, Face.Plain, Note)] };
        return value.Above(Paragraph.Lay(Note, Face.Plain, type.Floor, width));
    }
}
