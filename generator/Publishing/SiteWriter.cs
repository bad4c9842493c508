using CareSheets.Diagnostics;

namespace CareSheets.Publishing;

/// <summary>What a write changed, in numbers of files.</summary>
public sealed record WriteOutcome(int Written, int Unchanged, int Removed);

/// <summary>
/// Writes a site: all of it into a folder beside the old one, which takes the old one's place only
/// when the check of the new one finds nothing. Files whose bytes are the same keep their time
/// stamp, so that servers and browsers need not load them again.
/// </summary>
public sealed class SiteWriter(string into, DiagnosticBag bag)
{
    /// <summary>Marks a folder as ours: without it a folder with files in it is left alone.</summary>
    public const string Marker = ".caresheets";

    private const string MarkerText = "Written by CareSheets; the next run replaces everything in this folder.\n";

    private readonly string _target = Path.GetFullPath(into).TrimEnd(Path.DirectorySeparatorChar);

    private string Beside(string suffix) =>
        Path.Combine(Path.GetDirectoryName(_target) ?? "", $".{Path.GetFileName(_target)}.{suffix}");

    /// <summary>Nothing when the site was not replaced; then the bag says why.</summary>
    public WriteOutcome? Write(IReadOnlyList<SiteFile> files, Func<string, IEnumerable<Diagnostic>> check)
    {
        var (next, last) = (Beside("next"), Beside("last"));
        try
        {
            Recover(last);
            if (!IsOurs())
                return null;
            Delete(next);
            Directory.CreateDirectory(next);
            var outcome = Fill(next, files);
            var found = check(next).ToList();
            bag.Add(found);
            if (found.Exists(d => d.Severity == Severity.Error))
                return null;
            Swap(next, last);
            return outcome;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            bag.Add(PublishingCodes.CantWrite, SourceSpan.None, ("reason", failure.Message));
            return null;
        }
        finally
        {
            Delete(next);
        }
    }

    /// <summary>A run that was cut off between the two moves left the old site beside its place.</summary>
    private void Recover(string last)
    {
        if (!Directory.Exists(last))
            return;
        if (!Directory.Exists(_target))
            Directory.Move(last, _target);
        Delete(last);
    }

    private bool IsOurs()
    {
        var free = !Directory.Exists(_target) || File.Exists(Path.Combine(_target, Marker)) ||
            !Directory.EnumerateFileSystemEntries(_target).Any();
        if (!free || File.Exists(_target))
            bag.Add(PublishingCodes.NotOurs, SourceSpan.None, ("folder", into.Replace('\\', '/')));
        return free && !File.Exists(_target);
    }

    private WriteOutcome Fill(string next, IReadOnlyList<SiteFile> files)
    {
        var marker = new SiteFile(Marker, System.Text.Encoding.UTF8.GetBytes(MarkerText));
        var unchanged = files.Append(marker).AsParallel().Count(file => WriteOne(next, file));
        var before = Directory.Exists(_target)
            ? Directory.EnumerateFiles(_target, "*", SearchOption.AllDirectories).Count()
            : 0;
        var kept = files.Count(f => File.Exists(Path.Combine(_target, f.Address))) + 1;
        return new WriteOutcome(files.Count + 1 - unchanged, unchanged, Math.Max(0, before - kept));
    }

    /// <summary>True when the site has the very same file already.</summary>
    private bool WriteOne(string next, SiteFile file)
    {
        var path = Path.Combine(next, file.Address);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, file.Bytes.Span);
        var old = Path.Combine(_target, file.Address);
        var same = File.Exists(old) && new FileInfo(old).Length == file.Bytes.Length &&
            File.ReadAllBytes(old).AsSpan().SequenceEqual(file.Bytes.Span);
        if (same)
            File.SetLastWriteTimeUtc(path, File.GetLastWriteTimeUtc(old));
        return same;
    }

    private void Swap(string next, string last)
    {
        if (Directory.Exists(_target))
            Directory.Move(_target, last);
        try
        {
            Directory.Move(next, _target);
        }
        catch (IOException)
        {
            Recover(last);
            throw;
        }
        Delete(last);
    }

    private static void Delete(string folder)
    {
        if (Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
    }
}
