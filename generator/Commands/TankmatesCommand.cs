using System.ComponentModel;
using CareSheets.Collection;
using CareSheets.Names;
using CareSheets.Pages;
using CareSheets.Relatives;
using CareSheets.Species;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;
using Spectre.Console;
using Spectre.Console.Cli;

namespace CareSheets.Commands;

internal sealed class TankmatesSettings : ContentSettings
{
    [CommandArgument(0, "<name>")]
    [Description("Species, by file name or scientific name, today's or a former one; one or more.")]
    public string[] Names { get; init; } = [];

    [CommandOption("--tank <SIZE>")]
    [Description("A tank, such as 120x40x50cm, 48x16x20in, 240L, \"63 US gal\" or 120cm,240L.")]
    public string? Tank { get; init; }

    public TankReading? Reading => Tank is null ? null : TankText.Read(Tank);

    public override ValidationResult Validate() =>
        base.Validate() is { Successful: false } wrong ? wrong
        : Reading is { Problem: { } problem } ? ValidationResult.Error($"--tank can't be “{Tank}”: {Say(problem)}")
        : ValidationResult.Success();

    private static string Say(TankProblem problem) => problem switch
    {
        TankProblem.NotThreeSides =>
            "write length x width x height, as in 120x40x50cm, or what you know of it, " +
            "as in 120cm, 240L or 120cm,240L.",
        TankProblem.NotALength =>
            "each side is a length in cm, mm, m, in or ft, with a decimal point, as in 60.5x30x36cm.",
        TankProblem.NotAVolume =>
            "a volume has a unit, L, US gal or imp gal, as in 1.5L or \"63 US gal\"; three sides are written " +
            "120x40x50cm.",
        TankProblem.Impossible => "a side is between 10 cm and 10 m, and a volume between 1 L and 1000 m³.",
    };
}

/// <summary>Will these species live together, in this tank, and why not.</summary>
internal sealed class TankmatesCommand : Command<TankmatesSettings>
{
    public override int Execute(CommandContext context, TankmatesSettings settings, CancellationToken cancellationToken)
    {
        var bench = new Workbench(settings);
        var output = new ConsoleOutput(settings);
        if (bench.ReadCollection() is not { } collection || bench.ReadWords() is not { } words)
        {
            output.Diagnostics(bench.Bag.Sorted(), bench.Files);
            return ExitCode.ContentNeedsAPerson;
        }
        if (settings.Names.FirstOrDefault(n => Find(collection, n) is null) is { } unknown)
            return WrongName(unknown, collection);
        var relatives = new Lazy<RelativesEngine>(() => RelativesEngine.Ask(collection)); // many need no answer
        var gathering = Gathering.Of(
            settings.Names.Select(n => Tankmate.Of(
                Find(collection, n)!, collection, (entry, range) => relatives.Value.Suggest(entry, range))),
            collection.Ranges, settings.Reading?.Tank);
        var site = new Site(collection, words, settings.UnitSystem);
        ConsoleOutput.Plain(settings.Json
            ? GatheringJson.Print(site, gathering)
            : new GatheringText(site).Print(gathering));
        return ExitCode.Clean;
    }

    private static Entry? Find(SpeciesCollection collection, string name) =>
        collection.Find(EntryNames.Slug(name)) ??
        collection.Entries.FirstOrDefault(e => e.VernacularNames.Any(
            v => string.Equals(v.Value, name, StringComparison.OrdinalIgnoreCase))) ??
        (TradeCode.Read(name) is { } code
            ? collection.Entries.FirstOrDefault(e => e.TradeCodes.Any(c => c.Value == code)) : null);

    private static int WrongName(string name, SpeciesCollection collection)
    {
        if (collection.Known.Drafts.Contains(EntryNames.Slug(name)))
        {
            Console.Error.WriteLine(
                $"{name} is a draft, which nobody has read through: check every line, and take out draft: true.");
            return ExitCode.WrongUse;
        }
        var known = collection.Entries.Select(e => e.Name)
            .Concat(collection.FormerNames.Keys)
            .Concat(collection.Entries.SelectMany(e => e.VernacularNames.Select(v => v.Value)));
        var nearest = Nearest(EntryNames.Slug(name), [.. known]);
        Console.Error.WriteLine($"There is no species {name}. " + (nearest.Count == 0
            ? "Check how it is spelt."
            : $"Did you mean {string.Join(" or ", nearest)}?"));
        return ExitCode.WrongUse;
    }

    /// <summary>Up to three, the nearest first.</summary>
    private static IReadOnlyList<string> Nearest(string name, HashSet<string> known)
    {
        var found = new List<string>();
        while (found.Count < 3 && EditDistance.Nearest(name, known) is { } next)
        {
            found.Add(next);
            known.Remove(next);
        }
        return found;
    }
}
