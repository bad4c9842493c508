using CareSheets.Diagnostics;
using CareSheets.Reading;

namespace CareSheets.Tests.Schema;

/// <summary>Verdicts of the validator that no case file can bring about with today's schemas.</summary>
public sealed class SchemaErrorsTests
{
    /// <summary>SC210 stands in for keywords that a later schema may use before it has a sentence.</summary>
    [Fact]
    public void A_verdict_without_a_sentence_of_its_own_is_told_by_its_kind()
    {
        const string schema = """{ "type": "object", "properties": { "group": { "multipleOf": 5 } } }""";
        var found = Assert.Single(Check(schema, "group: 7"));
        Assert.Equal("SC210", found.Code.Id);
        Assert.Equal("group does not fit the schema (NumberNotMultipleOf)", found.Message);
    }

    /// <summary>Of several alternatives the one that fits best tells its reasons, not all of them.</summary>
    [Fact]
    public void A_failed_alternative_tells_the_reason_of_the_nearest_one()
    {
        const string schema = """
            { "type": "object", "properties": { "evidence": { "anyOf": [
              { "type": "string" },
              { "type": "object", "required": ["like"], "additionalProperties": false,
                "properties": { "like": { "type": "string" } } }
            ] } } }
            """;
        var found = Check(schema, "evidence: { liked: danio-rerio }").ToList();
        Assert.Equal(["SC201", "SC202"], found.Select(d => d.Code.Id).Order());
    }

    private static IReadOnlyList<Diagnostic> Check(string schema, string yaml)
    {
        var path = Path.GetTempFileName();
        File.WriteAllText(path, schema);
        var bag = new DiagnosticBag();
        var read = ContentSchema.Read(path, "test.schema.json", bag)!;
        File.Delete(path);
        new SchemaCheck(read, bag).Check(new YamlReader(new SourceFile("test.yaml", yaml), 1, bag).Read(yaml)!);
        return bag.Sorted();
    }
}
