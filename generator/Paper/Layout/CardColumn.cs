namespace CareSheets.Paper.Layout;

/// <summary>A column of a card that sections fill from the top; from some height on it may be narrower.</summary>
internal sealed record CardColumn(double Left, double Width, double Limit)
{
    private const double RoomiestGap = 2.6;

    private const double PieceGap = 0.3;

    /// <summary>Pieces that would end below this are laid in the narrow width.</summary>
    public double NarrowFrom { get; init; } = double.MaxValue;

    public double Narrow { get; init; }

    /// <summary>With what room is left shared among the gaps; nothing when the sections do not fit.</summary>
    public IReadOnlyList<Ink>? Fill(IReadOnlyList<CardSection> sections, double gap)
    {
        var (inks, end) = Stack(sections, gap);
        if (end > Limit)
            return null;
        var wider = gap + ((Limit - end) / Math.Max(1, sections.Count));
        var roomy = Stack(sections, Math.Min(gap * RoomiestGap, wider));
        return roomy.End <= Limit ? roomy.Inks : inks;
    }

    private (IReadOnlyList<Ink> Inks, double End) Stack(IReadOnlyList<CardSection> sections, double gap)
    {
        var inks = new List<Ink>();
        var y = 0.0;
        foreach (var section in sections)
        {
            y += y > 0 ? gap : 0;
            for (var i = 0; i < section.Pieces.Count; i++)
            {
                y += i > 0 ? gap * PieceGap : 0;
                var block = section.Pieces[i](Width);
                if (y + block.Height > NarrowFrom)
                    block = section.Pieces[i](Narrow);
                inks.AddRange(block.At(Left, y));
                y += block.Height;
            }
        }
        return (inks, y);
    }
}
