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
    private const double RightShare = 0.37;
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
    private double Left => IsWide ? width - Right - ColumnGap : width;

    private double ColumnGap => Points.ToMillimetres(type.Floor) * (type.IsForAfar ? 1.3 : 1.1);

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
    /// Facts go there too, the least important first, where the left has no room for all.
    /// </summary>
    private IReadOnlyList<Ink>? LayWide()
    {
        var foot = _sections.Foot(Left, mark);
        var sections = _sections.Make(isStacked: true).ToLookup(s => s.Place);
        var (facts, cautions) = (Pieces(sections[CardPlace.Facts]), Pieces(sections[CardPlace.Cautions]));
        var left = new CardColumn(0, Left, height - foot.Height - type.Gap);
        for (var kept = facts.Count; kept >= 0; kept--)
        {
            for (var moved = cautions.Count; moved >= 0; moved--)
            {
                var second = RightColumn().Fill(
                [
                    .. sections[CardPlace.Water], .. Some(CardPlace.Facts, facts.Skip(kept)),
                    .. Some(CardPlace.Cautions, cautions.Take(moved)),
                ], type.Gap);
                if (second is not null && left.Fill(
                [
                    .. sections[CardPlace.Head], .. sections[CardPlace.Size],
                    .. Some(CardPlace.Facts, facts.Take(kept)), .. Some(CardPlace.Cautions, cautions.Skip(moved)),
                ], type.Gap) is { } first)
                    return Whole([.. first, .. second], foot);
            }
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

    private static IReadOnlyList<Func<double, Block>> Pieces(IEnumerable<CardSection> sections) =>
        [.. sections.SelectMany(s => s.Pieces)];

    private static IEnumerable<CardSection> Some(CardPlace place, IEnumerable<Func<double, Block>> pieces)
    {
        IReadOnlyList<Func<double, Block>> some = [.. pieces];
        return some.Count == 0 ? [] : [new CardSection(place, some)];
    }

    private IReadOnlyList<Ink> Whole(IReadOnlyList<Ink> inks, Block foot) =>
        [.. inks, .. foot.At(0, height - foot.Height), .. _code?.At(width, height) ?? []];
}
