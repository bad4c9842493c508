namespace CareSheets.Paper.Layout;

/// <summary>
/// Parts at their places. A card that stands has one column, and lines beside the code are shorter. One
/// that lies has two: names, size and facts on the left, the water and the code on the right, and the
/// cautions wherever they fit.
/// </summary>
internal sealed class CardFlow(
    double width, double height, CardType type, CardContent content, IReadOnlyList<ICardPart> parts, string mark)
{
    /// <summary>From this width on, in heights, a card has two columns.</summary>
    private const double Wide = 1.15;

    /// <summary>The right column's share of the width; larger cards keep lines beside the code long.</summary>
    private const double RightShare = 0.385;
    private const double LargerRightShare = 0.41;

    /// <summary>Lines shorter than this, in mm, are not set beside the code.</summary>
    private const double LeastBeside = 30;

    private readonly CardSections _sections = new(content, parts, type, height);
    private readonly CodePart? _code = parts.OfType<CodePart>().FirstOrDefault();

    private double CodeSide => _code?.Side(width, height) ?? 0;

    /// <summary>What keeps away from the code: its quiet zone, or the card's own gap where that is wider.</summary>
    private double CodeQuiet => _code is null ? 0 : Math.Max(_code.Quiet(width, height), type.Gap);

    private double Right => width * (type.IsForAfar ? LargerRightShare : RightShare);

    private bool IsWide => width >= height * Wide;

    /// <summary>Of the column that the names stand in.</summary>
    private double Left => IsWide ? width - Right - (type.Gap * 2.4) : width;

    /// <summary>Whether the card can show only the beginning of a name.</summary>
    public bool CutsNames => content.Head.IsCut(Left, type, height * CardSections.MostHead);

    /// <summary>Nothing when it does not fit.</summary>
    public IReadOnlyList<Ink>? Lay() => IsWide ? LayWide() : LayTall();

    private IReadOnlyList<Ink>? LayTall()
    {
        var foot = _sections.Foot(Beside(width), mark);
        var column = new CardColumn(0, width, height - foot.Height - type.Gap)
        {
            NarrowFrom = height - CodeSide - CodeQuiet,
            Narrow = Beside(width),
        };
        return column.Fill([.. _sections.Make(isStacked: false)], type.Gap) is { } inks ? Whole(inks, foot) : null;
    }

    /// <summary>
    /// As many cautions as fit go under the water, the most important first; the others under the facts.
    /// </summary>
    private IReadOnlyList<Ink>? LayWide()
    {
        var foot = _sections.Foot(Left, mark);
        var sections = _sections.Make(isStacked: true).ToList();
        var cautions = sections.Find(s => s.Place == CardPlace.Cautions)?.Pieces ?? [];
        var others = sections.ToLookup(s => s.Place);
        for (var moved = cautions.Count; moved >= 0; moved--)
        {
            var first = new CardColumn(0, Left, height - foot.Height - type.Gap).Fill(
            [
                .. others[CardPlace.Head], .. others[CardPlace.Size], .. others[CardPlace.Facts],
                .. Some([.. cautions.Skip(moved)]),
            ], type.Gap);
            var second = RightColumn().Fill(
                [.. others[CardPlace.Water], .. Some([.. cautions.Take(moved)])], type.Gap);
            if (first is not null && second is not null)
                return Whole([.. first, .. second], foot);
        }
        return null;
    }

    private CardColumn RightColumn()
    {
        var codeTop = height - CodeSide - CodeQuiet;
        return Beside(Right) < LeastBeside
            ? new CardColumn(width - Right, Right, codeTop)
            : new CardColumn(width - Right, Right, height) { NarrowFrom = codeTop, Narrow = Beside(Right) };
    }

    private double Beside(double column) => column - CodeSide - CodeQuiet;

    private static IEnumerable<CardSection> Some(IReadOnlyList<Func<double, Block>> cautions) =>
        cautions.Count == 0 ? [] : [new CardSection(CardPlace.Cautions, cautions)];

    private IReadOnlyList<Ink> Whole(IReadOnlyList<Ink> inks, Block foot) =>
        [.. inks, .. foot.At(0, height - foot.Height), .. _code?.At(width, height) ?? []];
}
