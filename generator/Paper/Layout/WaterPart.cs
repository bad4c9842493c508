namespace CareSheets.Paper.Layout;

/// <summary>One figure of the water: what, in the writer's unit, in the other, and what to know of it.</summary>
public sealed record WaterPart(string Label, string First, string Second, string Brief) : ICardPart
{
    /// <summary>Thickness of the strong rules, in mm.</summary>
    private const double Rule = 0.5;

    public CardPlace Place => CardPlace.Water;

    public string Name => Label;

    public IEnumerable<string> Texts => [Label, First, Second, Brief];

    public Block Lay(double width, CardType type) => Paragraph.Lay(Label, Face.Plain, type.Floor, width)
        .Above(Paragraph.Lay(First, Face.Bold, type.Figure, width))
        .Above(Paragraph.Lay(Second, Face.Plain, type.Floor, width))
        .Above(Paragraph.Lay(Brief, Face.Plain, type.Floor, width));

    /// <summary>
    /// Side by side between two strong rules, in the largest type in which nothing breaks; where not even
    /// the words of the labels stay whole, under one another.
    /// </summary>
    public static Block LayAll(IReadOnlyList<WaterPart> parts, double width, CardType type)
    {
        var gap = type.Gap * 1.2;
        var (cells, figure) = Cells(parts, width - (gap * (parts.Count - 1)), type);
        var small = Points.ToMillimetres(type.Floor);
        if (parts.Zip(cells).Any(c => !LineBreaker.KeepsWhole(c.First.Label, Face.Plain, small, c.Second)))
            return Stack(parts, width, type);
        var pad = type.Gap * 0.55;
        var inks = new List<Ink>();
        var (x, height) = (0.0, 0.0);
        for (var i = 0; i < parts.Count; i++)
        {
            var cell = parts[i].Lay(cells[i], type with { Figure = figure });
            inks.AddRange(cell.At(x, Rule + pad));
            height = Math.Max(height, cell.Height);
            x += cells[i] + gap;
        }
        return Ruled(new Block(height + (2 * (Rule + pad)), inks), width);
    }

    /// <summary>Under one another between two strong rules.</summary>
    public static Block Stack(IReadOnlyList<WaterPart> parts, double width, CardType type)
    {
        var widest = parts.Max(p => FaceWidths.Of(p.First, Face.Bold, 1));
        var own = type with { Figure = Math.Clamp(width / Points.ToMillimetres(widest), type.Body, type.Figure) };
        var stack = parts.Aggregate(
            Block.Empty, (above, part) => above.Above(part.LayBeside(width, own), type.Gap * 0.45));
        var pad = type.Gap * 0.5;
        return Ruled(new Block(stack.Height + (2 * (Rule + pad)), [.. stack.At(0, Rule + pad)]), width);
    }

    /// <summary>
    /// The other unit follows on the line of the figure where there is room. A figure without a unit, such
    /// as pH, stands behind its label.
    /// </summary>
    private Block LayBeside(double width, CardType type)
    {
        var (size, gap) = (Points.ToMillimetres(type.Floor), type.Gap * 0.8);
        var label = FaceWidths.Of(Label, Face.Plain, size) + gap;
        var isBehind = Second.Length == 0 &&
            label + FaceWidths.Of(First, Face.Bold, Points.ToMillimetres(type.Figure)) <= width;
        var figure = Paragraph.Lay(First, Face.Bold, type.Figure, width);
        var last = (InkText)figure.Inks[^1];
        var named = isBehind
            ? new Block(figure.Height, [new InkText(0, last.Y, size, Face.Plain, Label), .. figure.At(label, 0)])
            : Paragraph.Lay(Label, Face.Plain, type.Floor, width)
                .Above(WithSecond(figure, last.Width + gap, width, type));
        return named.Above(Paragraph.Lay(Brief, Face.Plain, type.Floor, width));
    }

    private Block WithSecond(Block figure, double at, double width, CardType type)
    {
        var size = Points.ToMillimetres(type.Floor);
        var (y, isBeside) = (((InkText)figure.Inks[^1]).Y, at + FaceWidths.Of(Second, Face.Plain, size) <= width);
        return Second.Length > 0 && isBeside
            ? figure with { Inks = [.. figure.Inks, new InkText(at, y, size, Face.Plain, Second)] }
            : figure.Above(Paragraph.Lay(Second, Face.Plain, type.Floor, width));
    }

    /// <summary>As wide as each needs, with equal shares of what is left, or equal where that is too much.</summary>
    private static (double[] Cells, double Figure) Cells(IReadOnlyList<WaterPart> parts, double width, CardType type)
    {
        for (var figure = type.Figure; figure >= type.Body; figure *= 0.96)
        {
            var needs = parts.Select(p => p.Need(figure, type)).ToArray();
            var rest = width - needs.Sum();
            if (rest >= 0)
                return ([.. needs.Select(n => n + (rest / parts.Count))], figure);
        }
        return ([.. parts.Select(_ => width / parts.Count)], type.Body);
    }

    private double Need(double figure, CardType type)
    {
        var (large, small) = (Points.ToMillimetres(figure), Points.ToMillimetres(type.Floor));
        return new[]
        {
            FaceWidths.Of(First, Face.Bold, large), FaceWidths.Of(Label, Face.Plain, small),
            FaceWidths.Of(Second, Face.Plain, small),
        }.Max() + 0.01;
    }

    private static Block Ruled(Block inside, double width) => inside with
    {
        Inks = [new InkBox(0, 0, width, Rule), .. inside.Inks, new InkBox(0, inside.Height - Rule, width, Rule)],
    };
}
