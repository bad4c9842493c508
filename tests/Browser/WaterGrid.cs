using System.Globalization;
using CareSheets.Pages.Waters;
using CareSheets.Quantities;
using CareSheets.Tests.Tankmates;
using CareSheets.Water;
using CareSheets.Water.Bags;
using static CareSheets.Tests.Browser.WaterCase;

namespace CareSheets.Tests.Browser;

/// <summary>Grids of inputs for every sum of the water page, ends and refusals among them.</summary>
internal static class WaterGrid
{
    private static readonly double[] Acid = [4, 5.5, 6, 6.2, 6.5, 6.85, 7, 7.4, 7.83, 8, 8.5, 9, 9.5, 14];
    private static readonly double[] Celsius =
        [-1, 0, 4.5, 10, 18, 20, 22.5, 24, 25, 26.7, 28, 30, 33, 40, 40.1, 50, 51, 95];

    public static IEnumerable<WaterCase> Hardness() =>
        from unit in GeneralHardness.Dimension.Units.Where(u => u.Symbol.Length > 0)
        from figure in new[] { 0, 0.05, 0.5, 1, 3.36, 6.72, 8, 10.09, 17, 60.4, 75.5, 150, 181, 400 }
        let field = Field(GeneralHardness.Dimension, unit.Key, figure)
        select new WaterCase("hardness", new() { ["given"] = field }, (lines, _) =>
            lines.Hardness(Read<GeneralHardness>(field)));

    public static IEnumerable<WaterCase> Blends() =>
        from one in new[] { 0.0, 5, 8, 15, 20.3 }
        from other in new[] { 0, 0.5, 5, 12 }
        from target in new[] { 0, 3, 5, 7.7, 30 }
        from unit in new[] { "germanDegree", "milligramPerLitre" }
        let first = Field(GeneralHardness.Dimension, unit, one)
        let second = Field(GeneralHardness.Dimension, "germanDegree", other)
        let wanted = Field(GeneralHardness.Dimension, unit, target)
        let volume = Field(Volume.Dimension, one > 10 ? "usGallon" : "litre", 100)
        select new WaterCase(
            "blend", new() { ["one"] = first, ["other"] = second, ["target"] = wanted, ["volume"] = volume },
            (lines, text) => Told(
                Blend.For(
                    Read<GeneralHardness>(first).Value, Read<GeneralHardness>(second).Value,
                    Read<GeneralHardness>(wanted).Value),
                text, share => lines.Blend(share, Read<Volume>(volume), Unit(volume)), Unit(wanted)));

    public static IEnumerable<WaterCase> Changes() =>
        from tank in new[] { 0.0, 12.5, 40, 250 }
        from fresh in new[] { 0.0, 10, 60 }
        from percent in new[] { 0, 12.5, 25, 50, 100 }
        from times in new[] { 1, 2, 4, 30 }
        let before = Field(Concentration.Dimension, "milligramDissolved", tank)
        let tap = Field(Concentration.Dimension, "milligramDissolved", fresh)
        let share = Field(Share.Dimension, "percent", percent)
        select new WaterCase(
            "change",
            new() { ["tank"] = before, ["fresh"] = tap, ["replaced"] = share, ["times"] = ["", "", Number(times)] },
            (lines, text) => Told(
                WaterChange.After(
                    Read<Concentration>(before).Value, Read<Concentration>(tap).Value, Read<Share>(share).Value, times),
                text, after => lines.Changed(
                    times, Read<Share>(share).Text, WaterText.Show(after.Canonical, Unit(before)))));

    public static IEnumerable<WaterCase> Ammonia() =>
        from pH in Acid
        from celsius in Celsius
        from total in new[] { 0.001, 0.25, 1.3, 8 }
        let warmth = celsius > 24
            ? Field(Temperature.Dimension, "fahrenheit", Math.Round((celsius * 1.8) + 32, 2))
            : Field(Temperature.Dimension, "celsius", celsius)
        let acid = Field(Acidity.Dimension, "pH", pH)
        let ammonia = Field(
            CareSheets.Quantities.Ammonia.Dimension, total > 1 ? "milligramOfAmmonia" : "milligramOfNitrogen", total)
        select new WaterCase(
            "ammonia", new() { ["ph"] = acid, ["temperature"] = warmth, ["total"] = ammonia },
            (lines, text) => Told(
                UnionisedAmmonia.ShareAt(Read<Acidity>(acid).Value, Read<Temperature>(warmth).Value), text,
                share => lines.Ammonia(
                    Read<Ammonia>(ammonia), Read<Acidity>(acid), Read<Temperature>(warmth), share)));

    public static IEnumerable<WaterCase> Oxygen() =>
        from celsius in Celsius
        from metres in new[] { -400, 0, 140, 600, 1234.5, 3000, 5477, 6000, 9000, 19685 }
        let warmth = Field(Temperature.Dimension, "celsius", celsius)
        let height = Field(Altitude.Dimension, metres is 1234.5 or 19685 ? "footAboveSea" : "metreAboveSea", metres)
        select new WaterCase(
            "oxygen", new() { ["temperature"] = warmth, ["altitude"] = height },
            (lines, text) => Told(
                OxygenSaturation.At(Read<Temperature>(warmth).Value, Read<Altitude>(height).Value),
                text, oxygen => lines.Oxygen(Read<Temperature>(warmth).Text, Read<Altitude>(height).Text, oxygen),
                Read<Altitude>(height).Value.InMetres > 5500 && celsius is >= 0 and <= 40 ? Unit(height) : null));

    public static IEnumerable<WaterCase> Gas() =>
        from degrees in new[] { 0, 0.01, 0.5, 2, 4, 12.3, 25 }
        from pH in Acid
        from celsius in new[] { 0, 15, 22.5, 25, 30, 95 }
        let alkalinity = Field(CarbonateHardness.Dimension, "germanDegree", degrees)
        let acid = Field(Acidity.Dimension, "pH", pH)
        let warmth = Field(Temperature.Dimension, "celsius", celsius)
        select new WaterCase(
            "gas", new() { ["kh"] = alkalinity, ["ph"] = acid, ["temperature"] = warmth },
            (lines, text) => Told(
                MeasuredGas.In(
                    Read<CarbonateHardness>(alkalinity).Value, Read<Acidity>(acid).Value,
                    Read<Temperature>(warmth).Value),
                text, water => lines.Gas(
                    water, CarbonateWater.Aired(water.Alkalinity, water.Temperature).Value)));

    /// <summary>Every figure but the bag's temperature is left out in some of them.</summary>
    public static IEnumerable<WaterCase> Bags()
    {
        double?[] ammonia = [null, 0.05, 8], acids = [null, 6.2, 7.65, 8], degrees = [null, 3], hours = [null, 2, 26];
        (double? PH, double? Warmth, double? KH)[] tanks =
        [
            (7.9, 25, 12), (6.2, null, 1.5), (null, 26, 4), (7.1, 24, null), (6.6, 22, 5), (9.9, 25, 0), (7.2, 23, 6),
            (8.3, null, 9),
        ];
        foreach (var celsius in new[] { 22.0, 61 })
            foreach (var pH in acids)
                foreach (var total in ammonia)
                    foreach (var kh in degrees)
                        foreach (var time in hours)
                            foreach (var tank in tanks)
                                yield return Bag(celsius, pH, total, kh, time, tank);
    }

    private static WaterCase Bag(
        double celsius, double? pH, double? total, double? kh, double? hours,
        (double? PH, double? Warmth, double? KH) tank)
    {
        var fields = new Dictionary<string, string[]>();
        void Add(string name, Dimension dimension, string unit, double? figure)
        {
            if (figure is { } known)
                fields[name] = Field(dimension, unit, known);
        }
        Add("temperature", Temperature.Dimension, "celsius", celsius);
        Add("ph", Acidity.Dimension, "pH", pH);
        Add("ammonia", CareSheets.Quantities.Ammonia.Dimension, "milligramOfNitrogen", total);
        Add("kh", CarbonateHardness.Dimension, "germanDegree", kh);
        Add("hours", Elapsed.Dimension, "hour", hours);
        Add("tank_ph", Acidity.Dimension, "pH", tank.PH);
        Add("tank_temperature", Temperature.Dimension, "celsius", tank.Warmth);
        Add("tank_kh", CarbonateHardness.Dimension, "germanDegree", tank.KH);
        return new WaterCase("bag", fields, (_, text) => Told(Judge(fields), text, new BagLines(text).All));
    }

    private static SumResult<BagOutcome> Judge(Dictionary<string, string[]> fields)
    {
        T? Of<T>(string name)
            where T : struct, IQuantity<T> => fields.TryGetValue(name, out var field) ? Read<T>(field).Value : null;
        var bag = new BagReading(Of<Temperature>("temperature")!.Value)
        {
            PH = Of<Acidity>("ph"),
            Ammonia = Of<Ammonia>("ammonia"),
            Alkalinity = Of<CarbonateHardness>("kh"),
            UnderWay = Of<Elapsed>("hours"),
        };
        var tank = new ReceivingWater("")
        {
            PH = Of<Acidity>("tank_ph"),
            Temperature = Of<Temperature>("tank_temperature"),
            Alkalinity = Of<CarbonateHardness>("tank_kh"),
        };
        return BagCheck.Judge(bag, tank, Shop.Collection.Store.WaterLimits);
    }

    private static Unit Unit(string[] field) =>
        DimensionCatalogue.Find(field[0])!.Units.First(u => u.Key == field[1]);

    private static string[] Field(Dimension dimension, string unit, double figure) =>
        [dimension.Key, unit, Number(figure)];

    private static string Number(double figure) => figure.ToString(CultureInfo.InvariantCulture);
}
