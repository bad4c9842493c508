using CareSheets.PackingLists;

namespace CareSheets.Commands;

/// <summary>What a packing list gave: its lines, the arrival's file, and what is carried over into it.</summary>
internal sealed record Receipt(PackingList List, CarriedOver Carried, string File, string Text, bool IsWritten)
{
    /// <summary>Files in which what was there is kept; none where nothing was.</summary>
    public IReadOnlyList<string> Backups { get; private init; } = [];

    /// <summary>The receipt with all its files, for writing together.</summary>
    public (Receipt Receipt, StagedFiles Files) Stage(
        PackingListSettings settings, RememberedAnswers answers, string keptAs)
    {
        var staged = new StagedFiles();
        var list = Path.Combine(settings.ArrivalsFolder, keptAs).Replace('\\', '/');
        var sent = System.IO.File.ReadAllBytes(settings.File);
        List<string> backups = [.. new[] { File, list }.Where(System.IO.File.Exists)
            .Where(f => f != list || !System.IO.File.ReadAllBytes(f).SequenceEqual(sent))
            .Select(f => Keep(f, staged))];
        staged.Write(File, Text);
        staged.Write(list, sent);
        if (answers.All.Count > 0)
            staged.Write(settings.AnswersPath, AnswersText.Print(settings.Supplier, answers.All));
        return (this with { Backups = backups }, staged);
    }

    /// <summary>Each under a number of its own, so that none takes the place of an earlier one.</summary>
    private static string Keep(string path, StagedFiles staged)
    {
        var (folder, name) = (Path.GetDirectoryName(path)!, Path.GetFileNameWithoutExtension(path));
        var kept = Enumerable.Range(1, int.MaxValue - 1)
            .Select(n => Path.Combine(folder, $".{name}.before-{n}{Path.GetExtension(path)}").Replace('\\', '/'))
            .First(p => !System.IO.File.Exists(p));
        staged.Write(kept, System.IO.File.ReadAllBytes(path));
        return kept;
    }
}
