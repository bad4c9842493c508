using CareSheets.Reading.Conditions;
using CareSheets.Species;
using Newtonsoft.Json.Linq;

namespace CareSheets.Reading;

/// <summary>The schema of entries with what it declares, read once for all entries.</summary>
internal sealed class EntrySchema
{
    /// <summary>Sizes on which relatives can be compared, if the schema says so.</summary>
    private static readonly string[] Sizes = ["adult.length", "tank.length", "tank.volume"];

    private readonly Dictionary<string, QuantityDeclaration> _quantities;

    public EntrySchema(ContentSchema schema)
    {
        Schema = schema;
        Catalogue = new FieldCatalogue(schema);
        var care = (JObject)schema.Text["properties"]!["care"]!["properties"]!;
        Ranges = [.. care.Properties().Where(p => p.Value["x-dimension"] is not null)
            .Select(p => QuantityDeclaration.CareRange(p.Name, (JObject)p.Value))];
        Words = [.. care.Properties().Where(p => p.Value["enum"] is not null)
            .Select(p => new CareWordDeclaration(
                p.Name, p.Value["x-label"]?.Value<string>() ?? p.Name, p.Value["enum"]!.Values<string>().ToList()!))];
        Figures = new FigureDeclarations(Ranges, [.. Sizes.Select(Size).OfType<CareRangeDeclaration>()]);
        _quantities = Quantities("adult").Concat(Quantities("tank")).ToDictionary(q => q.Path, q => q.Declaration);
    }

    public ContentSchema Schema { get; }

    /// <summary>Every field that a condition can ask about.</summary>
    public FieldCatalogue Catalogue { get; }

    public IReadOnlyList<CareRangeDeclaration> Ranges { get; }

    public IReadOnlyList<CareWordDeclaration> Words { get; }

    public FigureDeclarations Figures { get; }

    public QuantityDeclaration Quantity(string path) => _quantities[path];

    private CareRangeDeclaration? Size(string path) =>
        Schema.Declaration(path) is { } declared && declared["x-relatives"] is not null
            ? QuantityDeclaration.CareRange(path, declared)
            : null;

    private IEnumerable<(string Path, QuantityDeclaration Declaration)> Quantities(string part) =>
        ((JObject)Schema.Text["properties"]![part]!["properties"]!).Properties()
            .Where(p => p.Value["x-dimension"] is not null)
            .Select(p => ($"{part}.{p.Name}", QuantityDeclaration.From((JObject)p.Value)));
}
