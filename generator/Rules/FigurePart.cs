using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Rules;

/// <summary>One number of a field's range, or the count that a field holds.</summary>
public sealed record FigurePart(string Field, RangePart Part)
{
    /// <summary>
    /// In the canonical unit; nothing when the field is not stated. An end that is open reaches as far as
    /// the quantity can, so that <c>&lt; 8 °dH</c> includes water without any hardness.
    /// </summary>
    public double? In(EntryFields entry) => entry[Field] switch
    {
        FieldFigure figure => Number(figure.Stated.Value),
        FieldCount count => count.Number.Value,
        _ => null,
    };

    private double? Number(StatedRange range) => Part switch
    {
        RangePart.Lowest => range.Low ?? range.Dimension.Minimum,
        RangePart.Highest => range.High ?? range.Dimension.Maximum,
        RangePart.Width => range.High - range.Low,
    };
}
