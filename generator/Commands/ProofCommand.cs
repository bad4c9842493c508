using System.ComponentModel;
using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Relatives;
using Spectre.Console.Cli;

namespace CareSheets.Commands;

internal sealed class ProofSettings : ContentSettings
{
    [CommandArgument(0, "[entry]")]
    [Description("Entries to proofread, by file name or scientific name; all of them when none is named.")]
    public string[] Entries { get; init; } = [];
}

/// <summary>Everything that <c>site</c> would say of the content, without writing anything.</summary>
internal sealed class ProofCommand : Command<ProofSettings>
{
    public override int Execute(CommandContext context, ProofSettings settings, CancellationToken cancellationToken)
    {
        var bench = new Workbench(settings);
        var output = new ConsoleOutput(settings);
        var collection = bench.ReadCollection();
        if (collection is not null)
        {
            bench.Bag.Add(OutlierText.Describe(RelativesEngine.Ask(collection)));
            bench.RenderProse(collection);
        }
        if (EntryNames.Unknown(settings.Entries, settings.Content) is { } unknown)
            return WrongName(unknown, collection);
        var found = Chosen(bench.Bag.Sorted(), settings);
        if (settings.Json)
            ConsoleOutput.Plain(DiagnosticJson.Print(found));
        else
        {
            output.Diagnostics(found, bench.Files);
            output.Line(Summary.Of(found));
        }
        return found.Any(d => d.Severity != Severity.Note) ? ExitCode.ContentNeedsAPerson : ExitCode.Clean;
    }

    private static IReadOnlyList<Diagnostic> Chosen(IReadOnlyList<Diagnostic> found, ProofSettings settings)
    {
        var files = settings.Entries.Select(e => $"/{EntryNames.FileOf(e)}").ToList();
        return files.Count == 0
            ? found
            : [.. found.Where(d => files.Exists(f => d.Span.File.EndsWith(f, StringComparison.Ordinal)))];
    }

    private static int WrongName(string name, SpeciesCollection? collection)
    {
        var known = collection?.Entries.Select(e => e.Name) ?? [];
        Console.Error.WriteLine($"There is no entry {name}. {CollectionLinker.Suggest(EntryNames.Slug(name), known)}");
        return ExitCode.WrongUse;
    }
}
