using System.ComponentModel;
using CareSheets.Names;
using CareSheets.Relatives;
using Spectre.Console.Cli;

namespace CareSheets.Commands;

internal sealed class ArrivalSettings : ContentSettings
{
    [CommandArgument(0, "<name>")]
    [Description("Scientific name of the species that has arrived, in quotes.")]
    public string Name { get; init; } = "";

    [CommandOption("--family <NAME>")]
    [Description("Its family, where nobody here knows the genus.")]
    public string? Family { get; init; }

    [CommandOption("--new")]
    [Description("It is a species of its own, although its name is near to that of an entry.")]
    public bool IsNew { get; init; }
}

/// <summary>Writes a draft of a new entry from what relatives say.</summary>
internal sealed class ArrivalCommand : Command<ArrivalSettings>
{
    public override int Execute(CommandContext context, ArrivalSettings settings, CancellationToken cancellationToken)
    {
        var typed = settings.Name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        if (ScientificName.Parse(string.Join(' ', typed)) is not { } name)
            return Refuse($"{settings.Name} is not a scientific name of a genus and an epithet, as in Danio rerio.");
        var bench = new Workbench(settings);
        if (bench.ReadCollection() is not { } collection)
        {
            new ConsoleOutput(settings).Diagnostics(bench.Bag.Sorted(), bench.Files);
            return ExitCode.ContentNeedsAPerson;
        }
        var file = Path.Combine(settings.Content, "species", name.Slug + ".md").Replace('\\', '/');
        if (File.Exists(file))
            return Refuse($"{file} is there already, and is left as it is.");
        if (collection.Find(name.Slug) is { } known)
            return Refuse($"{name} is a former name of {known.ScientificName.Value}, which has an entry.");
        if (!settings.IsNew && NearEntries.Question(collection, name) is { } question)
            return Refuse(question);
        var (place, problem) = NewPlaces.Of(collection, name, settings.Family);
        if (place is null)
            return Refuse(problem + UndraftedSpecies.Warnings(name, settings.Family, collection, bench.Law));
        return Write(DraftMaker.Make(RelativesEngine.Ask(collection), name, place), file, settings);
    }

    private static int Write(Draft draft, string file, ArrivalSettings settings)
    {
        using (var stream = new FileStream(file, FileMode.CreateNew))
            stream.Write(System.Text.Encoding.UTF8.GetBytes(DraftText.Print(draft)));
        if (settings.Json)
            ConsoleOutput.Plain(DraftJson.Print(draft, file));
        else
            new ConsoleOutput(settings).Line(
                $"{file} is a draft of {draft.Name} from {draft.Values.Count(v => v.Text.Length > 0)} values of " +
                "its relatives. Check every line, add what is missing, and take out draft: true.");
        return ExitCode.Clean;
    }

    private static int Refuse(string why)
    {
        Console.Error.WriteLine(why);
        return ExitCode.WrongUse;
    }
}
