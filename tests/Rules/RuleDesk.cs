using CareSheets.Diagnostics;
using CareSheets.Reading;
using CareSheets.Reading.Conditions;
using CareSheets.Rules;
using CareSheets.Species;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Rules;

/// <summary>Conditions and parts of entries from text, read by the schema of the repository.</summary>
internal static class RuleDesk
{
    public static readonly EntrySchema Schema = new(ContentSchema.Read(
        Repository.At("schema", "entry.schema.json"), "entry.schema.json", new DiagnosticBag())!);

    /// <summary>A part of an entry, one field in a line.</summary>
    public static EntryFields Entry(string yaml) => new EntryFieldsBinder(Schema.Catalogue).Bind(Yaml(yaml));

    public static Condition Condition(string sentence)
    {
        var bag = new DiagnosticBag();
        var read = Read(sentence, bag);
        Assert.True(bag.Sorted().Count == 0, ToySite.Told(bag));
        return Assert.Single(read.Parts);
    }

    public static IReadOnlyList<Diagnostic> Mistakes(string sentence)
    {
        var bag = new DiagnosticBag();
        Read(sentence, bag);
        return bag.Sorted();
    }

    public static Truth Judge(string sentence, string entry) => Condition(sentence).Judge(Entry(entry));

    private static AllOf Read(string sentence, DiagnosticBag bag) =>
        new ConditionReader(Schema.Catalogue, bag).All(Yaml($"when: [{sentence}]")["when"]);

    private static YamlMapping Yaml(string text) =>
        new YamlReader(new SourceFile("test.yaml", text), 1, new DiagnosticBag()).Read(text)!;
}
