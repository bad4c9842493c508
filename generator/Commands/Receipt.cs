using CareSheets.PackingLists;
using CareSheets.Relatives;

namespace CareSheets.Commands;

/// <summary>What a packing list gave: its lines, drafts of new entries, and the arrival's file.</summary>
internal sealed record Receipt(
    PackingList List, IReadOnlyList<Draft> Drafts, string File, string Text, bool IsWritten)
{
    /// <summary>All files of the receipt, for writing together.</summary>
    public StagedFiles Stage(PackingListSettings settings, RememberedAnswers answers, string keptAs)
    {
        var staged = new StagedFiles();
        if (System.IO.File.Exists(File))
            staged.Write(
                Path.Combine(settings.ArrivalsFolder, $".{settings.ArrivalName}.before.yaml"),
                System.IO.File.ReadAllBytes(File));
        staged.Write(File, Text);
        staged.Write(Path.Combine(settings.ArrivalsFolder, keptAs), System.IO.File.ReadAllBytes(settings.File));
        if (answers.All.Count > 0)
            staged.Write(settings.AnswersPath, AnswersText.Print(settings.Supplier, answers.All));
        foreach (var draft in Drafts)
            staged.Write(DraftPath(settings, draft), DraftText.Print(draft));
        return staged;
    }

    private static string DraftPath(PackingListSettings settings, Draft draft) =>
        Path.Combine(settings.Content, "species", draft.Name.Slug + ".md").Replace('\\', '/');
}
