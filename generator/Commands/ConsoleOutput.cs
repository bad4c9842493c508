using CareSheets.Diagnostics;
using Spectre.Console;

namespace CareSheets.Commands;

/// <summary>
/// What a run prints: results on standard output, progress and defects on standard error; colours
/// and progress on a terminal only.
/// </summary>
internal sealed class ConsoleOutput(ContentSettings settings)
{
    private readonly IAnsiConsole _progress = Errors();

    public static IAnsiConsole Errors() =>
        AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });

    /// <summary>Runs a long work and shows its steps on a terminal.</summary>
    public T Working<T>(Func<Action<string>, T> work)
    {
        if (settings.Quiet || settings.Json || Console.IsErrorRedirected)
            return work(_ => { });
        return _progress.Status().Start("", status => work(step => status.Status(Markup.Escape(step))));
    }

    public void Diagnostics(IReadOnlyList<Diagnostic> diagnostics, IReadOnlyDictionary<string, SourceFile> files)
    {
        var text = new DiagnosticText(files);
        foreach (var diagnostic in diagnostics.Where(d => !settings.Quiet || d.Severity == Severity.Error))
            Coloured(text.Print(diagnostic), diagnostic.Severity);
    }

    public void Line(string line)
    {
        if (!settings.Quiet)
            Plain(line + "\n");
    }

    /// <summary>Text as it is: never wrapped, so that editors and build servers can parse it.</summary>
    public static void Plain(string text) => Console.Out.Write(text);

    private static void Coloured(string text, Severity severity)
    {
        if (Console.IsOutputRedirected || !AnsiConsole.Profile.Capabilities.Ansi)
        {
            Plain(text);
            return;
        }
        var end = text.IndexOf('\n', StringComparison.Ordinal);
        var colour = severity switch
        {
            Severity.Error => "\u001b[31m",
            Severity.Warning => "\u001b[33m",
            Severity.Note => "\u001b[36m",
        };
        Plain($"{colour}{text[..end]}\u001b[0m{text[end..]}");
    }
}
