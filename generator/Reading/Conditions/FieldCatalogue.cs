using CareSheets.Quantities;
using CareSheets.Species;
using Newtonsoft.Json.Linq;

namespace CareSheets.Reading.Conditions;

/// <summary>
/// Every field of an entry that a condition can ask about, read off the schema: a field added there can
/// be ruled upon at once. Besides, <c>prose</c>, <c>words</c> for prose and
/// cautions together, and the shop's own water under <c>tap.</c>.
/// </summary>
internal sealed class FieldCatalogue
{
    private static readonly string[] Kinds = ["keep", "prefers", "wild", "survives", "breeding", "best"];

    private readonly Dictionary<string, FieldDeclaration> _byPath = [];

    public FieldCatalogue(ContentSchema entries)
    {
        Walk("", (JObject)entries.Text["properties"]!);
        Add("prose", FieldKind.Text);
        Add(EntryFields.AllWords, FieldKind.Text);
    }

    /// <summary>Longest first, so that a path is not taken for the beginning of a longer one.</summary>
    public IReadOnlyList<string> Paths =>
        field ??= [.. _byPath.Keys.OrderByDescending(p => p.Length).ThenBy(p => p, StringComparer.Ordinal)];

    public FieldDeclaration? Find(string path) => _byPath.GetValueOrDefault(path);

    private void Walk(string prefix, JObject properties)
    {
        foreach (var property in properties.Properties().Where(p => p.Value is JObject))
            Declare(prefix + property.Name, (JObject)property.Value);
    }

    private void Declare(string path, JObject declared)
    {
        if (declared["x-dimension"]?.Value<string>() is { } key)
            DeclareFigure(path, DimensionCatalogue.Find(key));
        else if (declared["properties"] is JObject inner)
            Walk(path + ".", inner);
        else if (declared["enum"] is JArray words)
            Add(path, FieldKind.Word, words: words);
        else if (declared["items"]?["enum"] is JArray listed)
            Add(path, FieldKind.List, words: listed);
        else if (declared["type"]?.Value<string>() == "integer")
            Add(path, FieldKind.Count);
        else if (declared["items"]?["type"]?.Value<string>() == "string" || declared["type"]?.ToString() == "string")
            Add(path, FieldKind.Text);
    }

    private void DeclareFigure(string path, Dimension? dimension)
    {
        Add(path, FieldKind.Figure, dimension);
        const string care = "care.";
        if (!path.StartsWith(care, StringComparison.Ordinal))
            return;
        foreach (var kind in Kinds)
            Add($"{path}.{kind}", FieldKind.Figure, dimension);
        Add($"tap.{path[care.Length..]}", FieldKind.Figure, dimension);
    }

    private void Add(string path, FieldKind kind, Dimension? dimension = null, JArray? words = null) =>
        _byPath[path] = new FieldDeclaration(
            path, kind, dimension, [.. words?.Values<string>().OfType<string>() ?? []]);
}
