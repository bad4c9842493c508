using CareSheets.Quantities;
using CareSheets.Water;
using Newtonsoft.Json.Linq;

namespace CareSheets.Reading;

/// <summary>The shop's own limits for advice on water, laid over those that come with the program.</summary>
internal sealed class WaterLimitsBinder(ContentSchema schema, QuantityBinder quantities)
{
    private const string Field = "waterLimits";

    public WaterLimits Bind(YamlMapping? stated)
    {
        var (all, fields) = (WaterLimits.Default, new Fields(stated));
        return all with
        {
            UnionisedAmmonia = Limit(fields, "unionisedAmmonia", all.UnionisedAmmonia),
            HarmfulAmmonia = Limit(fields, "harmfulAmmonia", all.HarmfulAmmonia),
            ShortTransit = Limit(fields, "shortTransit", all.ShortTransit),
            MixingRise = Limit(fields, "mixingRise", all.MixingRise),
            AcidityStep = Limit(fields, "acidityStep", all.AcidityStep),
            TemperatureStep = Limit(fields, "temperatureStep", all.TemperatureStep),
            FloatTime = Limit(fields, "floatTime", all.FloatTime),
            OrdinaryOxygen = Limit(fields, "ordinaryOxygen", all.OrdinaryOxygen),
            HighOxygen = Limit(fields, "highOxygen", all.HighOxygen),
            VeryHighOxygen = Limit(fields, "veryHighOxygen", all.VeryHighOxygen),
        };
    }

    private WaterLimit<T> Limit<T>(Fields fields, string name, WaterLimit<T> byDefault)
        where T : struct, IQuantity<T>
    {
        if (schema.Declaration(Field) is not { } limits || fields.Inner(name) is not { } inner ||
            limits["properties"]![name]!["properties"]!["value"] is not JObject declared)
            return byDefault;
        var value = quantities.BindClosed(
            inner.Text("value"), QuantityDeclaration.From(declared), $"{Field}.{name}.value");
        return value is null || inner.Text("source") is not { } source
            ? byDefault
            : new WaterLimit<T>(T.FromCanonical(value.Value.High!.Value), source.Value);
    }
}
