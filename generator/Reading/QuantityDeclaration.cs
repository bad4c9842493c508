using CareSheets.Quantities;
using CareSheets.Species;
using Newtonsoft.Json.Linq;

namespace CareSheets.Reading;

/// <summary>
/// What the schema declares of a figure: its dimension, its plausible limits, and whether a basis
/// of length belongs to it.
/// </summary>
internal sealed record QuantityDeclaration(Dimension Dimension, StatedRange Plausible, bool BasisRequired)
{
    /// <summary>Throws when the schema itself is wrong: a defect of ours, which a test would show.</summary>
    public static QuantityDeclaration From(JObject declared)
    {
        var key = Text(declared, "x-dimension");
        var dimension = DimensionCatalogue.Find(key)
            ?? throw new FormatException($"The schema names a dimension {key} that does not exist.");
        return new QuantityDeclaration(
            dimension, Range(declared, "x-plausible", dimension), Flag(declared, "x-basis"));
    }

    public static CareRangeDeclaration CareRange(string field, JObject declared)
    {
        var quantity = From(declared);
        var scale = Text(declared, "x-scale") == "logarithmic" ? RangeScale.Logarithmic : RangeScale.Linear;
        return new CareRangeDeclaration(
            field, quantity.Dimension, Text(declared, "x-label"), quantity.Plausible,
            Range(declared, "x-window", quantity.Dimension), scale,
            declared["x-scale-start"] is null ? 0 : Range(declared, "x-scale-start", quantity.Dimension).Low!.Value,
            Flag(declared, "x-relatives"), Flag(declared, "x-always-shown"));
    }

    private static bool Flag(JObject declared, string name) => declared[name]?.Value<bool>() ?? false;

    private static StatedRange Range(JObject declared, string name, Dimension dimension)
    {
        var parsed = QuantityText.Parse(Text(declared, name), dimension);
        return parsed.Ok
            ? parsed.Value
            : throw new FormatException($"The schema's {name} can't be read: {declared[name]}");
    }

    private static string Text(JObject declared, string name) =>
        declared[name]?.Value<string>() ?? throw new FormatException($"The schema lacks {name} at {declared.Path}.");
}
