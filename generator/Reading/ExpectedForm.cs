using CareSheets.Quantities;
using Newtonsoft.Json.Linq;

namespace CareSheets.Reading;

/// <summary>What a field is for and the form that it takes, as its schema declares it, for hints.</summary>
internal static class ExpectedForm
{
    /// <summary>Both in a sentence each; empty where the schema says nothing of the field.</summary>
    public static string Of(ContentSchema schema, string path) => Find(schema.Text, path) is { } declared
        ? string.Join(' ', new[] { declared["description"]?.Value<string>(), Form(declared) }
            .Where(s => !string.IsNullOrEmpty(s)))
        : "";

    /// <summary>The form of what goes without saying.</summary>
    private const string AnyLine = "one line of text";

    /// <summary>The form alone, with an example where there is one.</summary>
    public static string Form(JObject declared)
    {
        if (declared["x-dimension"]?.Value<string>() is { } key && DimensionCatalogue.Find(key) is { } dimension)
            return $"As in {dimension.Example}{(declared["x-basis"]?.Value<bool>() == true ? " TL" : "")}.";
        if (declared["x-form"]?.Value<string>() is { } form)
            return form == AnyLine ? "" : $"Write {form}.";
        if (declared["enum"] is JArray words)
            return $"One of: {string.Join(", ", words.Values<string>())}.";
        if (declared["items"] is JObject item)
            return List(item);
        if (declared["required"] is JArray required && declared["properties"] is not null)
            return $"It holds {string.Join(", ", required.Values<string>())}.";
        return declared["type"]?.ToString() == "integer" ? "Write a whole number." : "";
    }

    private static string List(JObject item) =>
        item["enum"] is JArray words
            ? $"A list, as in [{words.First()}], of: {string.Join(", ", words.Values<string>())}."
            : item["x-form"]?.Value<string>() is { } form && form != AnyLine ? $"A list, each {form}."
        : "A list, as in [one, two].";

    private static JObject? Find(JObject schema, string path)
    {
        JObject? at = schema;
        foreach (var step in path.Split('.', StringSplitOptions.RemoveEmptyEntries))
        {
            var name = step.Split('[')[0];
            at = at?["properties"]?[name] as JObject ?? Pattern(at);
            if (step.Contains('[', StringComparison.Ordinal))
                at = at?["items"] as JObject;
        }
        return at;
    }

    /// <summary>Files such as rules.yaml have records under names of any kind.</summary>
    private static JObject? Pattern(JObject? at) =>
        (at?["patternProperties"] as JObject)?.Properties().FirstOrDefault()?.Value as JObject;
}
