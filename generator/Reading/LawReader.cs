using System.Collections.Concurrent;
using CareSheets.Diagnostics;
using CareSheets.Regulations;

namespace CareSheets.Reading;

/// <summary>
/// Reads what the shop has written down of law: each file of <c>regulations</c> is a list, and
/// <c>duties.yaml</c> holds the duties of advice. Content without either is complete.
/// </summary>
internal sealed class LawReader(
    string contentFolder, string schemaFolder, ConcurrentDictionary<string, SourceFile> files, DiagnosticBag bag)
{
    private const string Folder = "regulations";
    private const string Duties = "duties.yaml";

    public LawBook Read() => new(ReadLists(), ReadDuties());

    private IReadOnlyList<RegulationList> ReadLists()
    {
        var folder = Path.Combine(contentFolder, Folder);
        if (!Directory.Exists(folder) || Schema("regulation.schema.json") is not { } schema)
            return [];
        var binder = new RegulationBinder(bag);
        return
        [
            .. from path in Directory.GetFiles(folder, "*.yaml").Order(StringComparer.Ordinal)
               let root = Root(path, schema)
               where root is not null
               let list = binder.Bind(Path.GetFileNameWithoutExtension(path), root)
               where list is not null
               select list,
        ];
    }

    private IReadOnlyList<AdviceDuty> ReadDuties()
    {
        var path = Path.Combine(contentFolder, Duties);
        return File.Exists(path) && Schema("duties.schema.json") is { } schema && Root(path, schema) is { } root
            ? DutyBinder.Bind(root, bag)
            : [];
    }

    private YamlMapping? Root(string path, ContentSchema schema)
    {
        var file = TextFileReader.Read(path, Shown(path), bag);
        if (file is null)
            return null;
        files[file.Path] = file;
        var root = new YamlReader(file, 1, bag).Read(file.Text);
        if (root is not null)
            new SchemaCheck(schema, bag).Check(root);
        return root;
    }

    private ContentSchema? Schema(string name)
    {
        var path = Path.Combine(schemaFolder, name);
        return ContentSchema.Read(path, Shown(path), bag);
    }

    private static string Shown(string path) => path.Replace('\\', '/');
}
