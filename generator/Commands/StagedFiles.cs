namespace CareSheets.Commands;

/// <summary>
/// Files that are written, moved away or taken away together or not at all. Each is first written
/// beside its place under a hidden name; what was there before is put back when anything fails.
/// </summary>
internal sealed class StagedFiles
{
    private readonly SortedDictionary<string, byte[]?> _files = new(StringComparer.Ordinal);

    public IEnumerable<string> Written => _files.Where(f => f.Value is not null).Select(f => f.Key);

    public void Write(string path, string text) => Write(path, System.Text.Encoding.UTF8.GetBytes(text));

    public void Write(string path, byte[] bytes) => _files[path] = bytes;

    public void Remove(string path) => _files[path] = null;

    /// <summary>The reason when it can't be done; then everything is as it was.</summary>
    public string? Commit()
    {
        var undo = new Stack<Action>();
        try
        {
            foreach (var (path, bytes) in _files.Where(f => f.Value is not null))
            {
                Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
                File.WriteAllBytes(Part(path), bytes!);
            }
            foreach (var (path, bytes) in _files)
                undo.Push(Replace(path, bytes is not null));
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            while (undo.TryPop(out var step))
                step();
            return failure.Message;
        }
        finally
        {
            foreach (var path in _files.Keys)
                File.Delete(Part(path));
        }
    }

    private static Action Replace(string path, bool isWritten)
    {
        var before = File.Exists(path) ? File.ReadAllBytes(path) : null;
        if (isWritten)
            File.Move(Part(path), path, overwrite: true);
        else
            File.Delete(path);
        return () =>
        {
            if (before is null)
                File.Delete(path);
            else
                File.WriteAllBytes(path, before);
        };
    }

    private static string Part(string path) =>
        Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path))!, $".{Path.GetFileName(path)}.part");
}
