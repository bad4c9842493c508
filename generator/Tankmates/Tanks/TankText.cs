using CareSheets.Quantities;

namespace CareSheets.Tankmates.Tanks;

/// <summary>A tank, or what is wrong with its text.</summary>
public sealed record TankReading(TankSize? Tank, TankProblem? Problem);

/// <summary>
/// Tanks as people write them: <c>120x40x50cm</c>, <c>48 x 16 x 20 in</c>, <c>240 L</c>,
/// <c>63 US gal</c>.
/// </summary>
public static class TankText
{
    /// <summary>Sides of less than a hand or more than a room are slips (in cm; common practice).</summary>
    public static readonly Stretch PossibleSide = Stretch.Between(10, 1000);

    /// <summary>In L; the largest is a box of the largest sides.</summary>
    public static readonly Stretch PossibleVolume = Stretch.Between(1, 1_000_000);

    private static readonly char[] Times = ['x', 'X', '×', '*'];

    public static TankReading Read(string text)
    {
        var parts = text.Split(Times);
        return parts.Length switch
        {
            1 => ReadVolume(text),
            3 => ReadSides(parts),
            _ => new TankReading(null, TankProblem.NotThreeSides),
        };
    }

    private static TankReading ReadVolume(string text)
    {
        if (One(text, DimensionCatalogue.Volume) is not { } litres)
            return new TankReading(null, TankProblem.NotAVolume);
        return PossibleVolume.Contains(litres)
            ? new TankReading(TankSize.OfVolume(Volume.FromLitres(litres)), null)
            : new TankReading(null, TankProblem.Impossible);
    }

    /// <summary>A unit after the last figure holds for those that have none.</summary>
    private static TankReading ReadSides(string[] parts)
    {
        var unit = parts[2].Trim().TrimStart("0123456789.".ToCharArray());
        var sides = parts.Select(p =>
            One(p, DimensionCatalogue.Length) ?? One($"{p.Trim()} {unit}", DimensionCatalogue.Length)).ToList();
        if (sides.Contains(null))
            return new TankReading(null, TankProblem.NotALength);
        var lengths = sides.OfType<double>().ToList();
        return lengths.TrueForAll(PossibleSide.Contains)
            ? new TankReading(Box([.. lengths.Select(Length.FromCentimetres)]), null)
            : new TankReading(null, TankProblem.Impossible);
    }

    private static TankSize Box(IReadOnlyList<Length> sides) => TankSize.OfBox(sides[0], sides[1], sides[2]);

    private static double? One(string text, Dimension dimension) =>
        QuantityText.Parse(text, dimension) is { Ok: true, Value: { IsSingle: true } stated } ? stated.Low : null;
}
