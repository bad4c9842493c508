namespace CareSheets.Paper.Layout;

/// <summary>The sizes of type on one card, in points, and the spaces that go with them.</summary>
/// <param name="Floor">The smallest type of a card of this size: nothing on it is smaller.</param>
/// <param name="Body">Facts and cautions.</param>
/// <param name="Name">The customers' name, the largest of all.</param>
/// <param name="Figure">The figures of the water.</param>
public sealed record CardType(double Floor, double Body, double Name, double Scientific, double Figure)
{
    /// <summary>
    /// Steps from roomy to tight, as multiples of the floor: body, name, scientific, figure, gap; and the
    /// picture's share of the card's height.
    /// </summary>
    private static readonly
        (double Body, double Name, double Scientific, double Figure, double Gap, double Picture)[] Steps =
    [
        (1.3, 3.4, 1.75, 2.0, 0.55, 0.17), (1.2, 3.1, 1.65, 1.85, 0.55, 0.17), (1.1, 2.8, 1.5, 1.7, 0.55, 0.15),
        (1, 2.5, 1.4, 1.5, 0.55, 0.13), (1, 2.1, 1.3, 1.35, 0.55, 0.11), (1, 1.7, 1.15, 1.2, 0.55, 0.09),
        (1, 1.45, 1.05, 1.1, 0.4, 0.09), (1, 1.45, 1.05, 1.1, 0.4, 0.07),
    ];

    /// <summary>No smaller, in floors, is a name that is read from a metre, unless one line asks for it.</summary>
    private const double LeastForAfar = 1.7;

    /// <summary>The floor, in points, of cards that are read from a metre.</summary>
    private const double Afar = 9;

    private const double Taller = 1.5;

    /// <summary>From this multiple of the floor on, a name is rather smaller than in two lines.</summary>
    private const double InOneLine = 2.1;

    /// <summary>Whether room is so short that a name takes one line, if smaller type makes that possible.</summary>
    public bool HasNameInOneLine => Name <= Floor * InOneLine;

    /// <summary>Between sections, in mm; more where the card has room left.</summary>
    public double Gap { get; init; }

    /// <summary>The highest that the picture of the fish may be, in mm.</summary>
    public double Picture { get; init; }

    /// <summary>
    /// The highest, in mm, where the animal is taller than long, which would be a speck else; no higher
    /// than others on the tightest card, which has cautions to find room for.
    /// </summary>
    public double TallPicture { get; init; }

    /// <summary>The column of the facts' labels, in mm.</summary>
    public double Labels { get; init; }

    /// <summary>
    /// Whether the card is read from a metre, so that the grown length and the gravest caution stand out. A
    /// smaller one is read at a hand's reach, and gives that room, and the shop's name, to more facts.
    /// </summary>
    public bool IsForAfar => Floor >= Afar;

    /// <summary>
    /// The smallest type: 9 pt from A6 upwards, 8 pt on A7, 7.5 pt on tickets that are read at a hand's
    /// reach. At one metre a letter is told by most eyes when it is 1.5 mm high (five minutes of arc:
    /// common practice, no source), which 9 pt just is.
    /// </summary>
    public static double FloorOf(PaperSize card) => card.ShortSide switch
    {
        >= 95 => Afar,
        >= 65 => 8,
        _ => 7.5,
    };

    public static double MarginOf(PaperSize card) => card.ShortSide switch
    {
        >= 95 => 5,
        >= 65 => 5,
        _ => 4,
    };

    public static IReadOnlyList<CardType> For(PaperSize card)
    {
        var floor = FloorOf(card);
        return [.. Steps.Select(s => new CardType(
            floor, s.Body * floor, Math.Max(s.Name, floor >= Afar ? LeastForAfar : 0) * floor,
            s.Scientific * floor, s.Figure * floor)
        {
            Gap = Points.ToMillimetres(floor) * s.Gap,
            Picture = card.Height * s.Picture,
            TallPicture = card.Height * (s == Steps[^1] ? s.Picture : s.Picture * Taller),
        })];
    }
}
