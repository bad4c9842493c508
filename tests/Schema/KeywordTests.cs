using CareSheets.Tests.Support;
using Newtonsoft.Json.Linq;
using NJsonSchema;

namespace CareSheets.Tests.Schema;

/// <summary>
/// The validator that the program uses ignores some keywords without a word. Each keyword of our
/// schemas is held against verdicts of a second validator, recorded in keyword-verdicts.json, which
/// names it.
/// </summary>
public sealed class KeywordTests
{
    private static readonly JObject Recorded =
        JObject.Parse(File.ReadAllText(Repository.At("tests", "Schema", "keyword-verdicts.json")));

    private static readonly HashSet<string> Annotations = ["$schema", "title", "description"];

    public static TheoryData<int, string> Cases()
    {
        var cases = (JArray)Recorded["cases"]!;
        Assert.True(cases.Count >= 90);
        var data = new TheoryData<int, string>();
        for (var i = 0; i < cases.Count; i++)
            data.Add(i, $"{cases[i]["keyword"]}: {cases[i]["instance"]?.ToString(Newtonsoft.Json.Formatting.None)}");
        return data;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public async Task Both_validators_agree(int number, string shown)
    {
        var one = Recorded["cases"]![number]!;
        var schema = await JsonSchema.FromJsonAsync(one["schema"]!.ToString());
        var valid = schema.Validate(one["instance"]!).Count == 0;
        Assert.True(one["valid"]!.Value<bool>() == valid, shown);
    }

    [Fact]
    public void Every_keyword_of_our_schemas_has_cases_that_pass_and_cases_that_fail()
    {
        var cases = (JArray)Recorded["cases"]!;
        var used = SchemaFiles().SelectMany(f => Keywords(JObject.Parse(File.ReadAllText(f)))).Distinct().ToList();
        Assert.Contains("pattern", used);
        foreach (var keyword in used)
        {
            var verdicts = cases.Where(c => (string?)c["keyword"] == keyword)
                .Select(c => c["valid"]!.Value<bool>()).ToList();
            Assert.True(verdicts.Contains(true) && verdicts.Contains(false), $"{keyword} is used and not tried.");
        }
    }

    /// <summary>NJsonSchema puts what it does not know into extension data: a misspelt keyword lands there.</summary>
    [Fact]
    public async Task Nothing_but_our_own_annotations_is_unknown_to_the_validator()
    {
        foreach (var file in SchemaFiles())
        {
            var schema = await JsonSchema.FromJsonAsync(await File.ReadAllTextAsync(file));
            var unknown = All(schema, []).SelectMany(s => s.ExtensionData?.Keys ?? []).Distinct()
                .Where(k => !k.StartsWith("x-", StringComparison.Ordinal)).ToList();
            Assert.True(unknown.Count == 0, $"{file}: {string.Join(", ", unknown)}");
        }
    }

    [Fact]
    public void Every_property_explains_itself_to_whoever_types_it()
    {
        var silent = SchemaFiles().SelectMany(f => Properties(JObject.Parse(File.ReadAllText(f))))
            .Where(p => p.Value["description"] is null && p.Value["allOf"] is null)
            .Select(p => p.Path).ToList();
        Assert.Empty(silent);
    }

    private static List<string> SchemaFiles()
    {
        var files = Repository.Files("schema", "*.schema.json").ToList();
        Assert.True(files.Count >= 4);
        return files;
    }

    private static IEnumerable<JProperty> Properties(JObject schema) =>
        schema.Descendants().OfType<JProperty>()
            .Where(p => p.Name == "properties" && p.Value is JObject)
            .SelectMany(p => ((JObject)p.Value).Properties());

    private static IEnumerable<string> Keywords(JToken node, bool inNames = false) => node switch
    {
        JObject named when inNames => named.Properties().SelectMany(p => Keywords(p.Value)),
        JObject schema => schema.Properties().SelectMany(p => Keywords(p)),
        JArray items => items.SelectMany(i => Keywords(i)),
        _ => [],
    };

    private static IEnumerable<string> Keywords(JProperty property)
    {
        if (Annotations.Contains(property.Name) || property.Name.StartsWith("x-", StringComparison.Ordinal))
            return [];
        var inner = property.Name switch
        {
            "properties" or "patternProperties" or "definitions" => Keywords(property.Value, inNames: true),
            "enum" or "required" or "type" => [],
            _ => Keywords(property.Value),
        };
        return inner.Prepend(property.Name);
    }

    private static IEnumerable<JsonSchema> All(JsonSchema schema, HashSet<JsonSchema> seen)
    {
        if (!seen.Add(schema))
            return [];
        var inner = schema.Properties.Values.Concat(schema.PatternProperties.Values.Cast<JsonSchema>())
            .Concat(schema.Definitions.Values).Concat(schema.AllOf).Concat(schema.AnyOf).Concat(schema.OneOf)
            .Append(schema.Item).Append(schema.Reference).OfType<JsonSchema>();
        return inner.SelectMany(s => All(s, seen)).Prepend(schema);
    }
}
