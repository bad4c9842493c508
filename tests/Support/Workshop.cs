using CareSheets.Commands;
using CareSheets.Diagnostics;
using CareSheets.Publishing;

namespace CareSheets.Tests.Support;

/// <summary>
/// A folder of its own for one test, with the toy content, the schemas and the theme of the
/// repository, in which the program's main job can be run. Gone when the test ends.
/// </summary>
internal sealed class Workshop : IDisposable
{
    public Workshop()
    {
        Copy(Repository.At("tests", "Support", "Toy"), Path.Combine(Folder, "content"));
        Copy(Repository.At("schema"), Path.Combine(Folder, "schema"));
        Copy(Repository.At("themes", "riffle"), Path.Combine(Folder, "theme"));
    }

    public string Folder { get; } = Directory.CreateTempSubdirectory("caresheets-").FullName;

    public string Site => Path.Combine(Folder, "published");

    public string this[string path] => Path.Combine(Folder, path);

    public void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(this[path])!);
        File.WriteAllText(this[path], text);
    }

    public void Replace(string path, string from, string to)
    {
        var text = File.ReadAllText(this[path]);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(this[path], text.Replace(from, to, StringComparison.Ordinal));
    }

    /// <summary>
    /// Files laid over those of the folder; one whose name ends in .removed takes the other away, and one that
    /// ends in .replaced has lines of the other by turns with what takes their place, which may be empty.
    /// </summary>
    public void Overlay(string folder)
    {
        Copy(folder, Folder);
        foreach (var (mark, file) in Marks(".removed"))
        {
            File.Delete(mark);
            File.Delete(file);
        }
        foreach (var (mark, file) in Marks(".replaced"))
        {
            foreach (var pair in File.ReadAllLines(mark).Chunk(2))
                Replace(file, pair[0] + "\n", pair.Length == 2 && pair[1].Length > 0 ? pair[1] + "\n" : "");
            File.Delete(mark);
        }
    }

    private List<(string Mark, string File)> Marks(string ending) =>
    [
        .. Directory.GetFiles(Folder, "*" + ending, SearchOption.AllDirectories)
            .Select(mark => (mark, mark[..^ending.Length])),
    ];

    public Run RunSite(string units = "both")
    {
        var settings = new SiteSettings
        {
            Content = this["content"],
            Theme = this["theme"],
            Into = Site,
            Units = units,
        };
        var bench = new Workbench(settings);
        var outcome = SiteCommand.Make(bench, settings, _ => { });
        return new Run(this, bench, outcome);
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    public static void Copy(string from, string to)
    {
        foreach (var path in Directory.GetFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, path));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(path, target, overwrite: true);
        }
    }
}

/// <summary>What a run of the main job gave.</summary>
internal sealed class Run(Workshop workshop, Workbench bench, WriteOutcome? outcome)
{
    public WriteOutcome? Outcome => outcome;

    public IReadOnlyList<Diagnostic> Found { get; } = bench.Bag.Sorted();

    /// <summary>All diagnostics as a person reads them, with paths as if run in the folder.</summary>
    public string Printed
    {
        get
        {
            var text = new DiagnosticText(bench.Files);
            return string.Concat(Found.Select(text.Print))
                .Replace(workshop.Folder.Replace('\\', '/') + "/", "", StringComparison.Ordinal);
        }
    }

    public string Page(string address) => File.ReadAllText(Path.Combine(workshop.Site, address));

    public void AssertClean() => Assert.True(Found.Count == 0 && outcome is not null, Printed);
}
