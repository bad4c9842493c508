using System.Collections.Concurrent;
using CareSheets.Diagnostics;

namespace CareSheets.Reading;

/// <summary>YAML files of a content folder, each kept for the messages about it and held against its schema.</summary>
internal sealed class CheckedYaml(
    string schemaFolder, ConcurrentDictionary<string, SourceFile> files, DiagnosticBag bag)
{
    /// <summary>Nothing when it is missing or no schema; then the bag says why.</summary>
    public ContentSchema? Schema(string name)
    {
        var path = Path.Combine(schemaFolder, name);
        return ContentSchema.Read(path, Shown(path), bag);
    }

    /// <summary>The tree of a file, also where the schema has faults to tell; nothing when there is no tree.</summary>
    public YamlMapping? Read(string path, ContentSchema schema)
    {
        if (TextFileReader.Read(path, Shown(path), bag) is not { } file)
            return null;
        files[file.Path] = file;
        var root = new YamlReader(file, 1, bag).Read(file.Text);
        if (root is not null)
            new SchemaCheck(schema, bag).Check(root);
        return root;
    }

    /// <summary>A path as messages show it on every system.</summary>
    public static string Shown(string path) => path.Replace('\\', '/');
}
