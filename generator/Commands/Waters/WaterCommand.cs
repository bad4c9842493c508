using System.Text.Encodings.Web;
using System.Text.Json;
using CareSheets.Diagnostics;
using Spectre.Console.Cli;

namespace CareSheets.Commands.Waters;

/// <summary>One sum on water: reads its figures, computes, and prints lines or JSON.</summary>
internal abstract class WaterCommand<TSettings> : Command<TSettings>
    where TSettings : ContentSettings
{
    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public override int Execute(CommandContext context, TSettings settings, CancellationToken cancellationToken)
    {
        var desk = new WaterDesk(settings);
        var answer = desk.Words is null ? null : Answer(settings, desk);
        if (answer is null || desk.Bag.HasErrors)
            return Refuse(desk, settings);
        ConsoleOutput.Plain(settings.Json
            ? JsonSerializer.Serialize(new { figures = answer.Figures, lines = answer.Lines }, Options) + "\n"
            : string.Concat(answer.Lines.Select(line => line + "\n")));
        return ExitCode.Clean;
    }

    /// <summary>Nothing when a figure is missing or the sum can't be done; the bag then says why.</summary>
    protected abstract WaterAnswer? Answer(TSettings settings, WaterDesk desk);

    /// <summary>A wrong figure is a wrong call; a broken store.yaml or theme is content that needs a person.</summary>
    private static int Refuse(WaterDesk desk, TSettings settings)
    {
        var found = desk.Bag.Sorted();
        if (settings.Json)
            ConsoleOutput.Plain(DiagnosticJson.Print(found));
        else
            Console.Error.Write(string.Concat(found.Select(new DiagnosticText(desk.Files).Print)));
        return desk.IsContentAtFault || desk.Words is null ? ExitCode.ContentNeedsAPerson : ExitCode.WrongUse;
    }
}
