namespace CareSheets.Tankmates.Tanks;

/// <summary>
/// Weight of a filled glass tank, for tanks up to a height, as a sum of products of its sides:
/// <c>Box·L·W·H + Walls·(L+W)·H + Corners·H + Floor·L·W</c>, sides in cm, kg.
/// </summary>
/// <remarks>
/// Filled to 92 %, water 0.998 kg/L (20 °C), 5 cm of gravel of 1.6 kg/L that displaces 0.6 of its
/// bulk, glass 2.5 kg/L, no lid, no stand: common practice and from memory, no source. Written as
/// factors so that a page can show the sum for any tank without knowing any of this.
/// </remarks>
/// <param name="UpTo">Height in cm up to which the glass is this thick.</param>
/// <param name="Glass">Thickness in cm; makers differ.</param>
public sealed record WeightStep(double UpTo, double Glass)
{
    private const double Water = 0.998 / 1000;
    private const double Filled = 0.92;
    private const double GlassWeight = 2.5 / 1000;
    private const double GravelDepth = 5;
    private const double GravelWeight = 1.6 / 1000;
    private const double GravelDisplaces = 0.6;

    public static double Box => Filled * Water;

    public double Walls => 2 * Glass * (GlassWeight - Box);

    public double Corners => 4 * Glass * Glass * (Box - GlassWeight);

    public double Floor => (Glass * GlassWeight) + (GravelDepth * (GravelWeight - (GravelDisplaces * Water)));

    public double Of(double length, double width, double height) =>
        (Box * length * width * height) + (Walls * (length + width) * height) +
        (Corners * height) + (Floor * length * width);
}
