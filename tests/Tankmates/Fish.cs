using CareSheets.Quantities;
using CareSheets.Species;
using CareSheets.Tankmates;
using CareSheets.Tests.Support;
using CsCheck;

namespace CareSheets.Tests.Tankmates;

/// <summary>Made-up companions: one that suits its like, and generators of all that an entry allows.</summary>
internal static class Fish
{
    public static readonly CareRangeDeclaration Temperature = Range("temperature", DimensionCatalogue.Temperature);
    public static readonly CareRangeDeclaration Acidity = Range("ph", DimensionCatalogue.Acidity);
    public static readonly CareRangeDeclaration Hardness = Range("hardness", DimensionCatalogue.GeneralHardness);
    public static readonly CareRangeDeclaration Salinity = Range("salinity", DimensionCatalogue.Salinity);
    public static readonly IReadOnlyList<CareRangeDeclaration> Ranges = [Temperature, Acidity, Hardness];
    public static readonly PairJudge Judge = new(Ranges);

    private static readonly Gen<string> Needs = Gen.OneOf("caves", "wood", "dense plants", "floating plants");

    /// <summary>A small, peaceful fish of ordinary water that gives nobody a reason.</summary>
    public static Tankmate Plain(string name) => new()
    {
        Name = name,
        Genus = "Genus" + name,
        Water =
        [
            new WaterNeed(Temperature, Stretch.Between(22, 27), null),
            new WaterNeed(Acidity, Stretch.Between(6, 7.5), null),
            new WaterNeed(Hardness, Stretch.Between(30, 250), null),
        ],
        Body = new Body(
            Stretch.Between(4, 5), LengthBasis.Total, BodyShape.Fusiform, Mouth.Small, Appetite.None),
        Flow = Flow.Gentle,
        Light = Light.Medium,
        Oxygen = Oxygen.Ordinary,
        OwnKind = Temper.Peaceful,
        Others = Temper.Peaceful,
        Levels = Levels.Middle,
        Group = 6,
        Housing = new(60, 30, 30, 54, Substrate.Any, Lid.Yes, []),
    };

    public static Gen<Body> Bodies =>
        from low in Gen.Double[1, 60]
        from more in Gen.Double[0, 20]
        from basis in Gen.Enum<LengthBasis>()
        from shape in Gen.Enum<BodyShape>()
        from mouth in Gen.Enum<Mouth>()
        from appetite in Gen.Enum<Appetite>()
        select new Body(Stretch.Between(low, low + more), basis, shape, mouth, appetite);

    public static Gen<Tankmate> Any(string name) =>
        from body in Bodies
        from water in Gen.Select(Need(Temperature, 16, 30), Need(Acidity, 4, 9), Need(Hardness, 0, 400))
        from temper in Gen.Select(Gen.Enum<Temper>(), Gen.Enum<Temper>())
        from flow in Gen.Enum<Flow>().Nullable()
        from light in Gen.Enum<Light>().Nullable()
        from levels in Gen.Int[0, 7]
        from flags in Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool)
        from words in Gen.Select(Gen.Enum<Fins>().Nullable(), Gen.Enum<Neighbours>(), Gen.Bool)
        from genus in Gen.OneOf("Danio", "Betta", "Hoplisoma", "Puntigrus")
        from count in Gen.Int[1, 12]
        from bottom in Gen.Enum<Substrate>()
        from needs in Needs.Array[0, 3]
        from sides in Gen.Select(Gen.Double[30, 200], Gen.Double[20, 80].Nullable(), Gen.Double[20, 80].Nullable())
        select Plain(name) with
        {
            Genus = genus,
            Body = body,
            Water = [water.Item1, water.Item2, water.Item3],
            OwnKind = temper.Item1,
            Others = temper.Item2,
            Flow = flow,
            Light = light,
            Levels = (Levels)levels,
            NipsFins = flags.Item1,
            EatsPlants = flags.Item2,
            IsTall = flags.Item3,
            Fins = words.Item1,
            Neighbours = words.Item2,
            NotWith = words.Item3 ? ["Danio"] : [],
            Avoided = genus == "Danio" ? ["Danio"] : [],
            Group = count,
            Housing = new(sides.Item1, sides.Item2, sides.Item3, sides.Item1 * 1.5, bottom, Lid.Yes, needs),
        };

    private static Gen<WaterNeed> Need(CareRangeDeclaration range, double low, double high) =>
        from keep in Inside(low, high).Nullable()
        from prefers in Inside(keep?.Low ?? low, keep?.High ?? high).Nullable()
        select new WaterNeed(range, keep, keep is null ? null : prefers);

    private static Gen<Stretch> Inside(double low, double high) =>
        from one in Gen.Double[low, high]
        from other in Gen.Double[low, high]
        select Stretch.Between(Math.Min(one, other), Math.Max(one, other));

    private static CareRangeDeclaration Range(string field, Dimension dimension)
    {
        var any = QuantityText.Parse(dimension.Example, dimension).Value;
        return new CareRangeDeclaration(field, dimension, field, any, any, RangeScale.Linear, 0, true, true)
        {
            DisagreeBeyond = double.MaxValue,
        };
    }
}
