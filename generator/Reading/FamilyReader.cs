using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Reading;

/// <summary>Reads <c>families.yaml</c>. Without it families have their Latin names alone.</summary>
internal sealed class FamilyReader(string contentFolder, CheckedYaml yaml)
{
    private const string FileName = "families.yaml";

    /// <summary>Nothing where there is no such file, or none that can be read; then the bag says why.</summary>
    public FamilyNotes? Read()
    {
        var path = Path.Combine(contentFolder, FileName);
        if (!File.Exists(path) || yaml.Schema("families.schema.json") is not { } schema ||
            yaml.Read(path, schema) is not { } root)
            return null;
        return new FamilyNotes(
            [.. root.Fields.Where(IsFamily).Select(Bind).OfType<FamilyNote>()],
            root.Fields.Select(f => f.Key.Text).ToHashSet());
    }

    /// <summary>A name of another form is the schema's to tell.</summary>
    private static bool IsFamily(YamlField field) => field.Key.Text.EndsWith("idae", StringComparison.Ordinal);

    private static FamilyNote? Bind(YamlField field)
    {
        var name = new Sourced<string>(field.Key.Text, field.Key.Span);
        var fields = new Fields(field.Value as YamlMapping);
        return fields.Texts("vernacularName") is { Count: > 0 } names && fields.Text("text") is { } text
            ? new FamilyNote(name, names, text.Value, EvidenceOf(fields, name))
            : null;
    }

    private static Evidence EvidenceOf(Fields fields, Sourced<string> name) =>
        EvidenceWord.Read(fields.Text("evidence")) ?? new Evidence(EvidenceKind.FromMemory, "", name.Span);
}
