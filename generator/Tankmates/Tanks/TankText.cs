using CareSheets.Quantities;

namespace CareSheets.Tankmates.Tanks;

/// <summary>A tank, or what is wrong with its text.</summary>
public sealed record TankReading(TankSize? Tank, TankProblem? Problem);

/// <summary>
/// Tanks as people write them: <c>120x40x50cm</c>, <c>48 x 16 x 20 in</c>, or what they know of one: <c>240 L</c>,
/// <c>63 US gal</c>, <c>120 cm</c>, <c>120 cm, 240 L</c>.
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
            1 => ReadLengthOrVolume(text.Split(',')),
            3 => ReadSides(parts),
            _ => new TankReading(null, TankProblem.NotThreeSides),
        };
    }

    /// <summary>A length, a volume, or the one and the other.</summary>
    private static TankReading ReadLengthOrVolume(string[] parts)
    {
        var length = One(parts[0], DimensionCatalogue.Length);
        if (parts.Length > 2 || (parts.Length == 2 && length is null))
            return new TankReading(null, TankProblem.NotALength);
        if (length is { } cm && !PossibleSide.Contains(cm))
            return new TankReading(null, TankProblem.Impossible);
        if (length is { } alone && parts.Length == 1)
            return new TankReading(TankSize.OfLength(Length.FromCentimetres(alone)), null);
        if (One(parts[^1], DimensionCatalogue.Volume) is not { } litres)
            return new TankReading(null, TankProblem.NotAVolume);
        if (!PossibleVolume.Contains(litres))
            return new TankReading(null, TankProblem.Impossible);
        var volume = Volume.FromLitres(litres);
        return new TankReading(
            length is { } known ? TankSize.OfLength(Length.FromCentimetres(known), volume) : TankSize.OfVolume(volume),
            null);
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
