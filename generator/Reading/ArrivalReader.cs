using CareSheets.Arrivals;
using CareSheets.Diagnostics;
using CareSheets.Names;

namespace CareSheets.Reading;

/// <summary>
/// The arrivals of a content folder, by file name. There need be none. Lists that suppliers sent may
/// lie beside them, and folders of their own.
/// </summary>
internal sealed class ArrivalReader(ContentSchema schema, DiagnosticBag bag)
{
    private const string Ending = ".yaml";

    private readonly ArrivalBinder _binder = new(schema, bag);

    /// <param name="folder">The folder of the arrivals, which need not exist.</param>
    /// <param name="shown">A path as messages show it.</param>
    /// <param name="keep">Takes each file that was read, for the messages about it.</param>
    public IReadOnlyList<Arrival> Read(string folder, Func<string, string> shown, Action<SourceFile> keep)
    {
        if (!Directory.Exists(folder))
            return [];
        var paths = Directory.GetFiles(folder).Order(StringComparer.Ordinal)
            .Where(p => !Path.GetFileName(p).StartsWith('.')).ToList();
        var arrivals = paths.Where(IsArrival).Select(p => Read(p, shown(p), keep)).OfType<Arrival>().ToList();
        var lists = arrivals.Select(a => a.List?.Value).ToHashSet();
        foreach (var stray in paths.Where(p => !IsArrival(p) && !lists.Contains(Path.GetFileName(p))))
            bag.Add(ArrivalCodes.StrayFile, SourceSpan.WholeFile(shown(stray)));
        return arrivals;
    }

    private Arrival? Read(string path, string shownPath, Action<SourceFile> keep)
    {
        if (TextFileReader.Read(path, shownPath, bag) is not { } file)
            return null;
        keep(file);
        if (new YamlReader(file, 1, bag).Read(file.Text) is not { } root)
            return null;
        new SchemaCheck(schema, bag).Check(root);
        var name = Path.GetFileNameWithoutExtension(path);
        if (Slug.From(name) != name)
            bag.Add(ArrivalCodes.FileName, file.Whole, ("name", name), ("expected", Slug.From(name) + Ending));
        return _binder.Bind(root, name);
    }

    private static bool IsArrival(string path) => path.EndsWith(Ending, StringComparison.Ordinal);
}
