using CareSheets.Renaming;

namespace CareSheets.Commands;

/// <summary>A copy of a content folder with its schemas, gone when it is no longer needed.</summary>
internal sealed class ContentCopy : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("caresheets-");

    public ContentCopy(string content, string schemas)
    {
        Copy(content, Content);
        Copy(schemas, Path.Combine(_folder.FullName, "schema"));
    }

    public string Content => Path.Combine(_folder.FullName, "content");

    public void Apply(IEnumerable<ContentEdit> edits)
    {
        foreach (var edit in edits)
        {
            File.Delete(Path.Combine(Content, edit.From));
            File.WriteAllText(Path.Combine(Content, edit.To), edit.Text);
        }
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static void Copy(string from, string to)
    {
        foreach (var path in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, path));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(path, target);
        }
    }
}
