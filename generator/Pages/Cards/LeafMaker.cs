using System.Globalization;
using CareSheets.Paper;
using CareSheets.Paper.Layout;

namespace CareSheets.Pages.Cards;

/// <summary>Cards with their places to drawings that a template prints.</summary>
internal static class LeafMaker
{
    /// <summary>In mm; Chromium begins a new page for a drawing that is a fraction of a pixel too high.</summary>
    private const double Short = 0.4;

    /// <summary>As many leaves as the cards need, in their order.</summary>
    public static IReadOnlyList<Leaf> Make(Imposition imposition, IReadOnlyList<CardPlan> cards) =>
        [.. cards.Chunk(imposition.Count).Select(some => Make(imposition, some))];

    private static Leaf Make(Imposition imposition, CardPlan[] cards)
    {
        var sheet = imposition.Sheet;
        return new Leaf(
            $"{Text(sheet.Width)}mm", $"{Text(sheet.Height - Short)}mm",
            $"0 0 {Text(sheet.Width)} {Text(sheet.Height - Short)}",
            [.. cards.Select((card, i) => Draw(card, imposition.Place(i)))],
            [
                .. imposition.CutMarks(cards.Length)
                    .Select(m => new LineDrawing(Text(m.X1), Text(m.Y1), Text(m.X2), Text(m.Y2))),
            ]);
    }

    private static CardDrawing Draw(CardPlan card, (double X, double Y) at)
    {
        var (width, height) = (Text(card.Size.Width), Text(card.Size.Height));
        return new CardDrawing(
            Text(at.X), Text(at.Y), width, height, $"0 0 {width} {height}",
            [.. card.Inks.OfType<InkText>().Select(Draw)],
            [.. card.Inks.OfType<InkBox>().Select(b =>
                new BoxDrawing(Text(b.X), Text(b.Y), Text(b.Width), Text(b.Height)))],
            [.. card.Inks.OfType<InkShape>().Select(Draw)]);
    }

    private static TextDrawing Draw(InkText line) => new(
        Text(line.X), Text(line.Y), Text(line.Size), Word(line.Face),
        FaceWidths.KnowsAll(line.Text, line.Face) ? Text(line.Width) : "", line.Text, line.Face == Face.Latin);

    private static ShapeDrawing Draw(InkShape shape) => new(
        $"translate({Text(shape.X)} {Text(shape.Y)}) scale({Text(shape.Across)} {Text(shape.Down)})",
        shape.Path, shape.Label);

    private static string Word(Face face) => face switch
    {
        Face.Plain => "plain",
        Face.Bold => "bold",
        Face.Latin => "latin",
    };

    private static string Text(double millimetres) =>
        millimetres.ToString("0.###", CultureInfo.InvariantCulture);
}
