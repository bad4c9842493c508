namespace CareSheets.Paper.Layout;

/// <summary>Ink that belongs together, from its own upper left, and the height that it takes.</summary>
public sealed record Block(double Height, IReadOnlyList<Ink> Inks)
{
    public static Block Empty { get; } = new(0, []);

    public IEnumerable<Ink> At(double x, double y) => Inks.Select(ink => ink.Move(x, y));

    /// <summary>One under the other, with a gap between.</summary>
    public Block Above(Block lower, double gap = 0) => lower.Height == 0 ? this
        : Height == 0 ? lower
        : new Block(Height + gap + lower.Height, [.. Inks, .. lower.At(0, Height + gap)]);
}
