using System.ComponentModel;
using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Relatives;
using Spectre.Console.Cli;

namespace CareSheets.Commands;

internal sealed class RelativesSettings : ContentSettings
{
    [CommandArgument(0, "[name]")]
    [Description("A species, by file name or scientific name, today's or a former one.")]
    public string? Name { get; init; }

    [CommandOption("--sarif")]
    [Description("Print SARIF 2.1.0, for editors and code hosts; without a name only.")]
    public bool Sarif { get; init; }

    public override Spectre.Console.ValidationResult Validate() => Sarif && Name is not null
        ? Spectre.Console.ValidationResult.Error(
            "--sarif tells of all values that fit no relative: leave the name out.")
        : base.Validate();
}

/// <summary>
/// What relatives say of a species, range by range; without a name, every value that fits none of them.
/// </summary>
internal sealed class RelativesCommand : Command<RelativesSettings>
{
    public override int Execute(CommandContext context, RelativesSettings settings, CancellationToken cancellationToken)
    {
        var bench = new Workbench(settings);
        var output = new ConsoleOutput(settings);
        if (bench.ReadCollection() is not { } collection)
        {
            output.Diagnostics(bench.Bag.Sorted(), bench.Files);
            return ExitCode.ContentNeedsAPerson;
        }
        return settings.Name is { } name
            ? TellOne(collection, name, settings.Json)
            : TellAll(collection, bench, output, settings);
    }

    private static int TellAll(
        SpeciesCollection collection, Workbench bench, ConsoleOutput output, RelativesSettings settings)
    {
        var (found, relatives) = (new DiagnosticBag(), RelativesEngine.Ask(collection));
        found.Add(OutlierText.Describe(relatives));
        var sorted = found.Sorted();
        if (settings.Sarif)
            ConsoleOutput.Plain(DiagnosticSarif.Print(sorted, [.. OutlierText.Accepted(relatives)]));
        else if (settings.Json)
            ConsoleOutput.Plain(DiagnosticJson.Print(sorted));
        else
        {
            output.Diagnostics(sorted, bench.Files);
            output.Line(Summary.Of(sorted));
        }
        return sorted.Any(d => d.Code.Severity != Severity.Note) ? ExitCode.ContentNeedsAPerson : ExitCode.Clean;
    }

    private static int TellOne(SpeciesCollection collection, string name, bool asJson)
    {
        if (collection.Find(EntryNames.Slug(name)) is not { } entry)
        {
            var known = collection.Entries.Select(e => e.Name).Concat(collection.FormerNames.Keys);
            var suggestion = CollectionLinker.Suggest(EntryNames.Slug(name), known);
            Console.Error.WriteLine($"There is no entry {name}. {suggestion}");
            return ExitCode.WrongUse;
        }
        var answers = SpeciesAnswer.Of(RelativesEngine.Ask(collection), entry);
        ConsoleOutput.Plain(asJson ? RelativesJson.Print(entry, answers) : RelativesText.Print(entry, answers));
        return ExitCode.Clean;
    }
}
