using System.Collections.Concurrent;
using CareSheets.Diagnostics;
using CareSheets.Reading.Conditions;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Reading;

/// <summary>
/// Reads a content folder with its schemas. Entries are read side by side; what is found is put
/// in order afterwards, so the outcome does not depend on which came first.
/// </summary>
public sealed partial class ContentReader(string contentFolder, string schemaFolder, DiagnosticBag bag)
{
    private readonly ConcurrentDictionary<string, SourceFile> _files = new();
    private EntrySchema? _schema;

    private CheckedYaml Yaml => new(schemaFolder, _files, bag);

    /// <summary>Nothing when a folder or a schema is missing; then the bag says why.</summary>
    public Content? Read()
    {
        if (!HasFolder(contentFolder, "--content") || !HasFolder(schemaFolder, "--content"))
            return null;
        var entries = Schema("entry.schema.json");
        var store = Schema("store.schema.json");
        var references = Schema("references.schema.json");
        var glossary = Schema("glossary.schema.json");
        var arrivals = Schema("arrival.schema.json");
        if (entries is null || store is null || references is null || glossary is null || arrivals is null)
            return null;
        var schema = _schema = new EntrySchema(entries);
        var (read, names, drafts) = ReadEntries(schema);
        List<Entry> bound = [.. read.Where(e => e.IsWhole)];
        var works = YamlFile("references.yaml", references);
        var words = YamlFile("glossary.yaml", glossary);
        return new Content(
            YamlFile("store.yaml", store) is { } root
                ? StoreBinder.Bind(root, new QuantityBinder(bag), store, bag) : null,
            bound,
            new KnownNames(
                names, names.Except(bound.Select(e => e.Name)).ToHashSet(), drafts, Keys(works), Keys(words)),
            works is null ? [] : KeyedBinder.References(works),
            words is null ? [] : KeyedBinder.Glossary(words),
            schema.Figures,
            _files)
        {
            Practice = ReadPractice(schema),
            Arrivals = new ArrivalReader(arrivals, Yaml, bag).Read(Path.Combine(contentFolder, "arrivals")),
            Law = new LawReader(contentFolder, Yaml, bag).Read(),
            Families = new FamilyReader(contentFolder, Yaml).Read(),
            Unfinished = [.. read.Where(e => !e.IsWhole)],
        };
    }

    private Practice ReadPractice(EntrySchema schema)
    {
        var binder = new PracticeBinder(schema, bag);
        YamlMapping? File(string name) =>
            Schema($"{name}.schema.json") is { } form ? YamlFile($"{name}.yaml", form) : null;
        var (rules, hazards) = (File("rules"), File("hazards"));
        var told = binder.Hazards(hazards);
        return new Practice(binder.Rules(rules), told, binder.Demands(File("demands")))
        {
            RuleNames = Keys(rules),
            HazardsFile = hazards?.Fields.Count == told.Count ? hazards.Span : null,
        };
    }

    /// <summary>The shop alone, for sums that need no species. Nothing where there is no readable store.yaml.</summary>
    public Store? ReadStore() =>
        HasFolder(schemaFolder, "--content") && Schema("store.schema.json") is { } store &&
        YamlFile("store.yaml", store) is { } root
            ? StoreBinder.Bind(root, new QuantityBinder(bag), store, bag)
            : null;

    public IReadOnlyDictionary<string, SourceFile> Files => _files;

    private static HashSet<string>? Keys(YamlMapping? root) => root?.Fields.Select(f => f.Key.Text).ToHashSet();

    private (IReadOnlyList<Entry>, HashSet<string>, HashSet<string>) ReadEntries(EntrySchema schema)
    {
        var folder = Path.Combine(contentFolder, "species");
        if (!HasFolder(folder, "--content"))
            return ([], [], []);
        var paths = Directory.GetFiles(folder).Order(StringComparer.Ordinal).ToList();
        var entryPaths = paths.Where(p => p.EndsWith(".md", StringComparison.Ordinal)).ToList();
        foreach (var stray in paths.Except(entryPaths).Where(p => !Path.GetFileName(p).StartsWith('.')))
            bag.Add(ReadingCodes.StrayFile, SourceSpan.WholeFile(CheckedYaml.Shown(stray)));
        if (entryPaths.Count == 0)
            bag.Add(ReadingCodes.NoEntries, SourceSpan.None, ("folder", CheckedYaml.Shown(folder)));

        var results = entryPaths.AsParallel().AsOrdered().Select(path => ReadEntry(path, schema)).ToList();
        foreach (var result in results)
            bag.Add(result.Found);
        return (
            [.. results.Select(r => r.Entry).OfType<Entry>()],
            entryPaths.Select(Name).ToHashSet(),
            entryPaths.Zip(results)
                .Where(r => r.Second.Found.Any(d => d.Code == ReadingCodes.Draft))
                .Select(r => Name(r.First)).ToHashSet());
    }

    private (Entry? Entry, IReadOnlyList<Diagnostic> Found) ReadEntry(string path, EntrySchema schema)
    {
        var own = new DiagnosticBag();
        var file = TextFileReader.Read(path, CheckedYaml.Shown(path), own);
        if (file is null)
            return (null, own.Sorted());
        _files[file.Path] = file;
        return (EntryReader.Read(file, schema, own), own.Sorted());
    }

    private YamlMapping? YamlFile(string name, ContentSchema schema) =>
        Yaml.Read(Path.Combine(contentFolder, name), schema);

    private ContentSchema? Schema(string name) => Yaml.Schema(name);

    private bool HasFolder(string folder, string option)
    {
        if (Directory.Exists(folder))
            return true;
        bag.Add(ReadingCodes.FolderMissing, SourceSpan.None, ("folder", CheckedYaml.Shown(folder)), ("option", option));
        return false;
    }

    private static string Name(string path) => Path.GetFileNameWithoutExtension(path);
}
