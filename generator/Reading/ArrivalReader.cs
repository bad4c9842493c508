using CareSheets.Arrivals;
using CareSheets.Diagnostics;
using CareSheets.Names;

namespace CareSheets.Reading;

/// <summary>
/// The arrivals of a content folder, by file name. There need be none. Lists that suppliers sent may
/// lie beside them, and folders of their own.
/// </summary>
internal sealed class ArrivalReader(ContentSchema schema, CheckedYaml yaml, DiagnosticBag bag)
{
    private const string Ending = ".yaml";

    private readonly ArrivalBinder _binder = new(schema, bag);

    /// <param name="folder">The folder of the arrivals, which need not exist.</param>
    public IReadOnlyList<Arrival> Read(string folder)
    {
        if (!Directory.Exists(folder))
            return [];
        var paths = Directory.GetFiles(folder).Order(StringComparer.Ordinal)
            .Where(p => !Path.GetFileName(p).StartsWith('.')).ToList();
        var arrivals = paths.Where(IsArrival).Select(ReadArrival).OfType<Arrival>().ToList();
        var lists = arrivals.Select(a => a.List?.Value).ToHashSet();
        foreach (var stray in paths.Where(p => !IsArrival(p) && !lists.Contains(Path.GetFileName(p))))
            bag.Add(ArrivalCodes.StrayFile, SourceSpan.WholeFile(CheckedYaml.Shown(stray)));
        return arrivals;
    }

    private Arrival? ReadArrival(string path)
    {
        if (yaml.Read(path, schema) is not { } root)
            return null;
        var name = Path.GetFileNameWithoutExtension(path);
        if (Slug.From(name) != name)
            bag.Add(ArrivalCodes.FileName, SourceSpan.WholeFile(CheckedYaml.Shown(path)),
                ("name", name), ("expected", Slug.From(name) + Ending));
        return _binder.Bind(root, name);
    }

    private static bool IsArrival(string path) => path.EndsWith(Ending, StringComparison.Ordinal);
}
