using CareSheets.Diagnostics;
using Newtonsoft.Json.Linq;
using NJsonSchema;

namespace CareSheets.Reading;

/// <summary>
/// One JSON schema of the content: NJsonSchema for the verdicts, and the schema's own text for
/// what it declares in our annotations, all of which begin with <c>x-</c>.
/// </summary>
internal sealed class ContentSchema
{
    private ContentSchema(JsonSchema schema, JObject text)
    {
        Schema = schema;
        Text = text;
    }

    public JsonSchema Schema { get; }

    public JObject Text { get; }

    /// <summary>The declaration of a field by its path, such as <c>adult.length</c>.</summary>
    public JObject? Declaration(string path) =>
        path.Split('.').Aggregate((JObject?)Text, (at, name) => at?["properties"]?[name] as JObject);

    /// <summary>Nothing when the file is not a schema; then the bag says why.</summary>
    public static ContentSchema? Read(string fullPath, string shownPath, DiagnosticBag bag)
    {
        var file = TextFileReader.Read(fullPath, shownPath, bag);
        if (file is null)
            return null;
        try
        {
            var schema = JsonSchema.FromJsonAsync(file.Text).GetAwaiter().GetResult();
            return new ContentSchema(schema, JObject.Parse(file.Text));
        }
        catch (Exception failure) when (failure is Newtonsoft.Json.JsonException or InvalidOperationException)
        {
            bag.Add(SchemaCodes.BadSchema, file.Whole, ("reason", failure.Message.ReplaceLineEndings(" ")));
            return null;
        }
    }
}
