using System.ComponentModel;
using System.Text.Encodings.Web;
using System.Text.Json;
using Spectre.Console.Cli;

namespace CareSheets.Commands;

internal sealed class RenameSettings : ContentSettings
{
    [CommandArgument(0, "<old>")]
    [Description("Today's name of a species, or of a genus all of whose species move.")]
    public string Old { get; init; } = "";

    [CommandArgument(1, "<new>")]
    [Description("The new name, of the same rank.")]
    public string New { get; init; } = "";
}

/// <summary>Gives a species or a genus another name: file, author, former names, every mention at once.</summary>
internal sealed class RenameCommand : Command<RenameSettings>
{
    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public override int Execute(CommandContext context, RenameSettings settings, CancellationToken cancellationToken)
    {
        var rehearsal = NameRehearsal.Of(settings.Old, settings.New, settings);
        if (rehearsal.Problem.Length > 0)
            return Refuse(rehearsal.Problem);
        if (Commit(rehearsal, settings.Content) is { } reason)
            return Refuse($"Nothing was changed: {reason}");
        Tell(rehearsal, settings, isDone: true);
        return ExitCode.Clean;
    }

    /// <summary>What would follow, without doing it.</summary>
    public static int Rehearse(string change, ContentSettings settings)
    {
        var parts = change.Split('=', 2);
        if (parts.Length != 2)
            return Refuse("Write the old and the new name as in --if \"Old name=New name\".");
        var rehearsal = NameRehearsal.Of(parts[0], parts[1], settings);
        if (rehearsal.Problem.Length > 0)
            return Refuse(rehearsal.Problem);
        Tell(rehearsal, settings, isDone: false);
        return ExitCode.Clean;
    }

    /// <summary>All files or none; the reason where none.</summary>
    internal static string? Commit(NameRehearsal rehearsal, string content)
    {
        var staged = new StagedFiles();
        foreach (var edit in rehearsal.Edits.Where(e => e.From != e.To))
            staged.Remove(Path.Combine(content, edit.From));
        foreach (var edit in rehearsal.Edits)
            staged.Write(Path.Combine(content, edit.To), edit.Text);
        return staged.Commit();
    }

    private static void Tell(NameRehearsal rehearsal, ContentSettings settings, bool isDone)
    {
        if (settings.Json)
        {
            ConsoleOutput.Plain(JsonSerializer.Serialize(new
            {
                done = isDone,
                moves = rehearsal.Moves.Select(m => new
                {
                    from = m.OldName.ToString(),
                    to = m.Name.ToString(),
                    authorship = m.Authorship.Text,
                    formerNames = m.FormerNames.Select(n => n.ToString()),
                }),
                files = rehearsal.Edits.Select(e => new { from = e.From, to = e.To }),
                consequences = rehearsal.Lines,
            }, Options) + "\n");
            return;
        }
        var output = new ConsoleOutput(settings);
        foreach (var line in rehearsal.Lines)
            output.Line(line);
        output.Line(isDone
            ? $"{rehearsal.Edits.Count} files are changed. Ask the authority which name the law of your place uses."
            : $"{rehearsal.Edits.Count} files would be changed; nothing was.");
    }

    private static int Refuse(string why)
    {
        Console.Error.WriteLine(why);
        return ExitCode.WrongUse;
    }
}
