using System.Globalization;
using CareSheets.Arrivals;
using CareSheets.Diagnostics;
using CareSheets.Quantities;
using Newtonsoft.Json.Linq;

namespace CareSheets.Reading;

/// <summary>
/// Tree of an arrival to its record. It binds what it can and complains only about what the schema
/// can't see.
/// </summary>
internal sealed class ArrivalBinder
{
    private readonly QuantityBinder _quantities;
    private readonly DateBinder _dates;
    private readonly BatchBinder _batches;
    private readonly IReadOnlyDictionary<string, QuantityDeclaration> _bagFigures;

    public ArrivalBinder(ContentSchema schema, DiagnosticBag bag)
    {
        _quantities = new QuantityBinder(bag);
        _dates = new DateBinder(bag);
        _bagFigures = Figures(schema, "bags");
        _batches = new BatchBinder(Figures(schema, "batches"), _quantities, _dates);
    }

    /// <summary>Nothing without supplier, day and a batch; the schema has then said so.</summary>
    public Arrival? Bind(YamlMapping root, string name)
    {
        var fields = new Fields(root);
        var date = _dates.Day(fields.Text("date"), "date");
        var packed = _dates.Moment(fields.Text("packed"), "packed");
        var opened = _dates.Moment(fields.Text("opened"), "opened");
        List<MeasuredBag> bags = [.. Mappings(fields, "bags").Select(Bag).OfType<MeasuredBag>()];
        List<Batch> batches = [.. Mappings(fields, "batches").Select(_batches.Bind).OfType<Batch>()];
        if (fields.Text("supplier") is not { } supplier || date is null || batches.Count == 0)
            return null;
        return new Arrival
        {
            Name = name,
            Supplier = supplier,
            Date = date,
            List = fields.Text("list"),
            Packed = packed,
            Opened = opened,
            Bags = bags,
            Batches = batches,
        };
    }

    public static IEnumerable<YamlMapping> Mappings(Fields fields, string name) =>
        fields.Node(name) is YamlSequence { Items: var items } ? items.OfType<YamlMapping>() : [];

    /// <summary>A number that the schema has found to be one.</summary>
    public static decimal? Number(Sourced<string>? text) =>
        text is not null && decimal.TryParse(
            text.Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;

    private MeasuredBag? Bag(YamlMapping node)
    {
        var fields = new Fields(node);
        StatedRange? Figure(string name) =>
            _quantities.BindClosed(fields.Text(name), _bagFigures[name], $"bags.{name}")?.Value;
        var (temperature, ph) = (Figure("temperature"), Figure("ph"));
        var (hardness, ammonia) = (Figure("carbonateHardness"), Figure("ammonia"));
        var (system, tank) = (fields.Text("system"), fields.Text("tank"));
        return system is null && tank is null
            ? null
            : new MeasuredBag(
                system, tank, (double?)Number(fields.Text("hours")), temperature, ph, hardness, ammonia);
    }

    private static Dictionary<string, QuantityDeclaration> Figures(ContentSchema schema, string list) =>
        ((JObject)schema.Text["properties"]![list]!["items"]!["properties"]!).Properties()
            .Where(p => p.Value["x-dimension"] is not null)
            .ToDictionary(p => p.Name, p => QuantityDeclaration.From((JObject)p.Value));
}
