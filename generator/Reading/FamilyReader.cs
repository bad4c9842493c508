using System.Collections.Concurrent;
using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Reading;

/// <summary>Reads <c>families.yaml</c>. Content without it is complete: its families have their Latin names alone.</summary>
internal sealed class FamilyReader(
    string contentFolder, string schemaFolder, ConcurrentDictionary<string, SourceFile> files, DiagnosticBag bag)
{
    private const string FileName = "families.yaml";

    /// <summary>Nothing where there is no such file, or none that can be read; then the bag says why.</summary>
    public IReadOnlyList<FamilyNote>? Read()
    {
        var path = Path.Combine(contentFolder, FileName);
        var schemaPath = Path.Combine(schemaFolder, "families.schema.json");
        if (!File.Exists(path) || ContentSchema.Read(schemaPath, Shown(schemaPath), bag) is not { } schema ||
            TextFileReader.Read(path, Shown(path), bag) is not { } file)
            return null;
        files[file.Path] = file;
        if (new YamlReader(file, 1, bag).Read(file.Text) is not { } root)
            return null;
        new SchemaCheck(schema, bag).Check(root);
        return [.. root.Fields.Select(Bind).OfType<FamilyNote>()];
    }

    private static FamilyNote? Bind(YamlField field)
    {
        var (name, fields) = (new Sourced<string>(field.Key.Text, field.Key.Span), new Fields(field.Value as YamlMapping));
        return fields.Texts("vernacularName") is { Count: > 0 } names && fields.Text("text") is { } text
            ? new FamilyNote(name, names, text.Value, EvidenceOf(fields, name))
            : null;
    }

    private static Evidence EvidenceOf(Fields fields, Sourced<string> name) =>
        EvidenceWord.Read(fields.Text("evidence")) ?? new Evidence(EvidenceKind.FromMemory, "", name.Span);

    private static string Shown(string path) => path.Replace('\\', '/');
}
