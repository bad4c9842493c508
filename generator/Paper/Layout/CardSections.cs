namespace CareSheets.Paper.Layout;

/// <summary>The parts of a card sorted into what stands together, in the type of one step.</summary>
internal sealed class CardSections(CardContent content, IReadOnlyList<ICardPart> parts, CardType type, double height)
{
    /// <summary>The share of a card's height that names may take before they are cut.</summary>
    public const double MostHead = 0.45;

    /// <summary>Lines that the name of the shop may take.</summary>
    private const int MostShop = 2;

    private readonly CardType _type = type with { Labels = WidestLabel(parts, type) };

    /// <param name="isStacked">Whether the water's figures stand under one another.</param>
    public IEnumerable<CardSection> Make(bool isStacked)
    {
        yield return new(CardPlace.Head,
            [Kept(w => content.Head.Lay(w, _type, height * MostHead)), .. Each(CardPlace.Head)]);
        if (parts.OfType<WaterPart>().ToList() is { Count: > 0 } water)
            yield return new(CardPlace.Water,
                [Kept(w => isStacked ? WaterPart.Stack(water, w, _type) : WaterPart.LayAll(water, w, _type))]);
        // The picture brings the length's words with it.
        if (Of(CardPlace.Size).LastOrDefault() is { } size)
            yield return new(CardPlace.Size, [Kept(w => size.Lay(w, _type))]);
        foreach (var place in new[] { CardPlace.Facts, CardPlace.Cautions })
        {
            if (Of(place).Any())
                yield return new(place, [.. Each(place)]);
        }
    }

    /// <summary>What is offered, what found no room, then the shop, the day and the mark.</summary>
    public Block Foot(double width, string mark)
    {
        var offers = Of(CardPlace.Foot).Aggregate(
            Block.Empty, (above, part) => above.Above(part.Lay(width, _type), type.Gap * 0.3));
        return offers
            .Above(Paragraph.Lay(content.More(parts), Face.Plain, type.Floor, width), type.Gap * 0.5)
            .Above(Signature(width, mark));
    }

    private Block Signature(double width, string mark)
    {
        var (shop, date) = (content.Foot.Shop, content.Foot.Date);
        var (whole, signed) = ($"{shop} · {date} · {mark}", $"{date} · {mark}");
        if (type.IsForAfar && Fits(whole, width))
            return Line(whole, width);
        var below = Fits(signed, width) ? Line(signed, width) : Line(date, width).Above(Line(mark, width));
        return type.IsForAfar
            ? Paragraph.Cut(shop, Face.Plain, type.Floor, width, MostShop * Line("", width).Height).Above(below)
            : below;
    }

    private bool Fits(string line, double width) =>
        FaceWidths.Of(line, Face.Plain, Points.ToMillimetres(type.Floor)) <= width;

    private Block Line(string line, double width) =>
        Paragraph.Lines(
            LineBreaker.Break(line, Face.Plain, Points.ToMillimetres(type.Floor), width), Face.Plain, type.Floor);

    private IEnumerable<ICardPart> Of(CardPlace place) => parts.Where(p => p.Place == place);

    private IEnumerable<Func<double, Block>> Each(CardPlace place) =>
        Of(place).Select(part => Kept(w => part.Lay(w, _type)));

    /// <summary>Laid once in each width, for places are tried out.</summary>
    private static Func<double, Block> Kept(Func<double, Block> lay)
    {
        var laid = new Dictionary<double, Block>();
        return width => laid.TryGetValue(width, out var block) ? block : laid[width] = lay(width);
    }

    private static double WidestLabel(IEnumerable<ICardPart> parts, CardType type)
    {
        var labels = parts.OfType<FactPart>().Select(f => f.Label)
            .Concat(parts.OfType<SizePart>().Select(s => s.Length.Label));
        return labels.Max(l => (double?)FaceWidths.Of(l, Face.Plain, Points.ToMillimetres(type.Floor))) ?? 0;
    }
}
