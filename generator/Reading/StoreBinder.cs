using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Species;
using Newtonsoft.Json.Linq;

namespace CareSheets.Reading;

/// <summary>Tree of store.yaml to the shop's record.</summary>
internal static class StoreBinder
{
    public static Store? Bind(YamlMapping root, QuantityBinder quantities, ContentSchema schema, DiagnosticBag bag)
    {
        var fields = new Fields(root);
        if (fields.Text("name") is not { } name || fields.Text("place") is not { } place ||
            fields.Text("address") is not { } address || fields.Text("units") is not { } units ||
            fields.Text("paper") is not { } paper || fields.Text("language") is not { } language)
            return null;
        var tap = (JObject)schema.Text["properties"]!["tap"]!["properties"]!;
        var system = (JObject)schema.Text["properties"]!["systems"]!["items"]!["properties"]!;
        var systems = fields.Node("systems") is YamlSequence { Items: var items } ? items : [];
        return new Store(
            name.Value, place.Value, address.Value,
            fields.Text("contact")?.Value, fields.Text("about")?.Value, language.Value,
            units.Value == "us" ? UnitSystem.US : UnitSystem.Metric, paper.Value,
            fields.Text("jurisdiction")?.Value,
            fields.Node("tap") is YamlMapping water ? Water(water, tap, "tap", quantities) : null,
            [.. systems.OfType<YamlMapping>().Select(s => Water(s, system, "systems", quantities))])
        {
            RelativesDisagree = Limits(fields, schema, quantities),
            Cards = CardFormBinder.Bind(fields.Inner("cards"), paper.Value, bag),
            Observation = Observation(fields.Inner("observation")),
            Currency = fields.Text("currency")?.Value,
            Altitude = AltitudeOf(fields, schema, quantities),
            WaterLimits = new WaterLimitsBinder(schema, quantities).Bind(fields.Node("waterLimits") as YamlMapping),
            Advice = AdviceBinder.Advice(fields),
            Licence = fields.Text("licence")?.Value,
        };
    }

    private static Observation Observation(Fields fields) =>
        fields.Integer("days") is { } days && fields.Text("source") is { } source
            ? new Observation(days.Value, source.Value)
            : Species.Observation.Usual;

    private static Dictionary<string, double> Limits(Fields fields, ContentSchema schema, QuantityBinder quantities)
    {
        const string field = "relativesDisagree";
        if (fields.Node(field) is not YamlMapping limits || schema.Declaration(field) is not { } declared)
            return [];
        return Water(limits, (JObject)declared["properties"]!, field, quantities).Figures
            .Where(f => f.Value.High is not null)
            .ToDictionary(f => f.Key, f => f.Value.High!.Value);
    }

    private static Altitude AltitudeOf(Fields fields, ContentSchema schema, QuantityBinder quantities) =>
        schema.Declaration("altitude") is { } declared &&
        quantities.BindClosed(fields.Text("altitude"), QuantityDeclaration.From(declared), "altitude") is { } bound
            ? Altitude.FromMetres(bound.Value.High!.Value)
            : default;

    private static StoreWater Water(YamlMapping water, JObject declared, string path, QuantityBinder quantities)
    {
        var fields = new Fields(water);
        var figures = new Dictionary<string, StatedRange>();
        foreach (var property in declared.Properties().Where(p => p.Value["x-dimension"] is not null))
        {
            var quantity = QuantityDeclaration.From((JObject)property.Value);
            if (quantities.Bind(fields.Text(property.Name), quantity, $"{path}.{property.Name}") is { } bound)
                figures[property.Name] = bound.Value;
        }
        return new StoreWater(fields.Text("name")?.Value ?? "", figures);
    }
}
