using System.ComponentModel;
using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Housing;
using CareSheets.Relatives;
using Spectre.Console.Cli;

namespace CareSheets.Commands;

internal sealed class ProofSettings : ContentSettings
{
    [CommandArgument(0, "[entry]")]
    [Description("Entries to proofread, by file name or scientific name; all of them when none is named.")]
    public string[] Entries { get; init; } = [];

    [CommandOption("--if <CHANGE>")]
    [Description("What follows from a change of name, as \"Old name=New name\", or of a genus \"Old=New\".")]
    public string? If { get; init; }

    [CommandOption("--sarif")]
    [Description("Print SARIF 2.1.0, for editors and code hosts.")]
    public bool Sarif { get; init; }
}

/// <summary>Everything that <c>site</c> would say of the content, without writing anything.</summary>
internal sealed class ProofCommand : Command<ProofSettings>
{
    public override int Execute(CommandContext context, ProofSettings settings, CancellationToken cancellationToken)
    {
        if (settings.If is { } change)
            return RenameCommand.Rehearse(change, settings);
        var bench = new Workbench(settings);
        var output = new ConsoleOutput(settings);
        var collection = bench.ReadCollection();
        IReadOnlyList<AcceptedDiagnostic> accepted = [];
        if (collection is not null)
        {
            var relatives = RelativesEngine.Ask(collection);
            bench.Bag.Add(OutlierText.Describe(relatives));
            bench.Bag.Add(OxygenCheck.Describe(collection));
            var waived = bench.ProofByRules(collection, DateOnly.FromDateTime(DateTime.Now));
            accepted = [.. OutlierText.Accepted(relatives).Concat(waived).Where(a => IsChosen(a.Diagnostic, settings))];
            ProofStep.Run(bench, collection);
            bench.RenderProse(collection);
        }
        if (EntryNames.Unknown(settings.Entries, settings.Content) is { } unknown)
            return WrongName(unknown, collection);
        List<Diagnostic> found = [.. bench.Bag.Sorted().Where(d => IsChosen(d, settings))];
        if (settings.Sarif)
            ConsoleOutput.Plain(DiagnosticSarif.Print(found, accepted));
        else if (settings.Json)
            ConsoleOutput.Plain(DiagnosticJson.Print(found));
        else
        {
            output.Diagnostics(found, bench.Files);
            output.Line(Summary.Of(found));
        }
        return found.Any(d => d.Severity != Severity.Note) ? ExitCode.ContentNeedsAPerson : ExitCode.Clean;
    }

    private static bool IsChosen(Diagnostic found, ProofSettings settings) =>
        settings.Entries.Length == 0 ||
        settings.Entries.Any(e => IsOf(e, found.Span) || (Compares(found) && found.Related.Any(r => IsOf(e, r.Span))));

    private static bool IsOf(string entry, SourceSpan span) =>
        span.File.EndsWith($"/{EntryNames.FileOf(entry)}", StringComparison.Ordinal);

    /// <summary>A value that does not fit that of one or two others: then each of them may be the odd one.</summary>
    private static bool Compares(Diagnostic found) => found.Related.Count <= FewRelatives.Most &&
        (found.Code == RelativesCodes.Apart || found.Code == RelativesCodes.ApartBySlip);

    private static int WrongName(string name, SpeciesCollection? collection)
    {
        var known = collection?.Entries.Select(e => e.Name) ?? [];
        Console.Error.WriteLine($"There is no entry {name}. {CollectionLinker.Suggest(EntryNames.Slug(name), known)}");
        return ExitCode.WrongUse;
    }
}
