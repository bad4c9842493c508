namespace CareSheets.Paper.Layout;

/// <summary>
/// Both names, which no card is without: the customers' in the largest type, then the scientific one.
/// </summary>
public sealed record HeadPart(string Vernacular, string Scientific)
{
    private const double Smallest = 1.3;
    private const double Finer = 0.96;
    private const double ScientificOfName = 0.75;

    public IEnumerable<string> Texts => [Vernacular, Scientific];

    /// <summary>
    /// The name is as large as the step allows in two lines of whole words, or in one. What would be higher than
    /// <paramref name="most"/> is cut, with three points at its end.
    /// </summary>
    public Block Lay(double width, CardType type, double most)
    {
        var points = NamePoints(width, type);
        var below = Math.Max(type.Floor, Math.Min(type.Scientific, points * ScientificOfName));
        var scientific = Paragraph.Cut(Scientific, Face.Latin, below, width, most / 3);
        var name = Paragraph.Cut(Vernacular, Face.Bold, points, width, most - scientific.Height);
        return name.Above(scientific, type.Gap * 0.2);
    }

    /// <summary>Whether the card can show only the beginning of a name.</summary>
    public bool IsCut(double width, CardType type, double most) =>
        Lay(width, type, most).Height < Lay(width, type, double.MaxValue).Height;

    /// <summary>In one line where room is short and its type can be made so small.</summary>
    private double NamePoints(double width, CardType type) =>
        (type.HasNameInOneLine ? LargestPoints(width, type, 1) : null) ?? LargestPoints(width, type, 2)
        ?? type.Floor * Smallest;

    /// <summary>The largest type in which whole words take so many lines, if there is one.</summary>
    private double? LargestPoints(double width, CardType type, int lines)
    {
        for (var points = type.Name; points > type.Floor * Smallest; points *= Finer)
        {
            var size = Points.ToMillimetres(points);
            if (LineBreaker.KeepsWhole(Vernacular, Face.Bold, size, width) &&
                LineBreaker.Break(Vernacular, Face.Bold, size, width).Count <= lines)
                return points;
        }
        return null;
    }
}
