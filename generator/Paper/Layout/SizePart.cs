using System.Globalization;

namespace CareSheets.Paper.Layout;

/// <summary>
/// The grown animal over a ruler, as large as it is where the card has the room, else a whole number
/// of times smaller; the ruler shrinks with it, so that both agree on any paper.
/// </summary>
/// <param name="Name">What people call it, when told that it found no room.</param>
/// <param name="Length">The length in words, which the drawing stands under.</param>
/// <param name="ActualSize">What is said of a drawing as large as the animal.</param>
/// <param name="Smaller">What is said of a smaller one, with the blank <c>{times}</c>.</param>
public sealed record SizePart(
    string Name, FactPart Length, Outline Outline, Ruler Ruler, string ActualSize, string Smaller) : ICardPart
{
    private static readonly int[] Scales = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 100];

    public CardPlace Place => CardPlace.Size;

    /// <summary>The scale follows from the card's size; the drawing from length and build.</summary>
    public IEnumerable<string> Texts =>
        [.. Length.Texts, Ruler.Unit, Outline.Path, Round(Outline.Length), Round(Outline.Deep)];

    public Block Lay(double width, CardType type)
    {
        var highest = Outline.Deep > Outline.Total ? type.TallPicture : type.Picture;
        var smaller = Scales.FirstOrDefault(
            s => Outline.Length * Outline.Total / s <= width && Outline.Length * Outline.Deep / s <= highest,
            Scales[^1]);
        var scale = smaller == 1
            ? ActualSize
            : Smaller.Replace("{times}", smaller.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);
        var length = Outline.Length / smaller;
        var drawing = new Block((length * Outline.Deep) + 0.6,
            [new InkShape(0, 0, length, length * Outline.Deep, Outline.Path, "")]);
        return Caption(scale).Lay(width, type)
            .Above(drawing, type.Gap * 0.4)
            .Above(Ruler.Lay(width, smaller, type));
    }

    private FactPart Caption(string scale) =>
        Length with { Note = Length.Note.Length == 0 ? scale : $"{Length.Note} · {scale}" };

    private static string Round(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
