using System.ComponentModel;
using System.Text;
using CareSheets.Diagnostics;
using CareSheets.Housing;
using CareSheets.Pages;
using CareSheets.Pages.Cards;
using CareSheets.Pages.Mates;
using CareSheets.Pages.Stock;
using CareSheets.Pages.Waters;
using CareSheets.Publishing;
using CareSheets.Relatives;
using CareSheets.Rendering;
using CareSheets.Tankmates;
using Spectre.Console;
using Spectre.Console.Cli;

namespace CareSheets.Commands;

internal sealed class SiteSettings : ContentSettings
{
    [CommandOption("--into <DIR>")]
    [Description("The folder that the site is written to; the whole of it is replaced.")]
    [DefaultValue("published")]
    public string Into { get; init; } = "published";

    public override ValidationResult Validate() => base.Validate() is { Successful: false } wrong ? wrong
        : string.IsNullOrWhiteSpace(Into)
            ? ValidationResult.Error("--into needs the name of a folder, such as published.")
        : Path.GetDirectoryName(Path.GetFullPath(Into)) is null
            ? ValidationResult.Error($"--into can't be “{Into}”, for a site has a folder of its own: name one in it.")
            : ValidationResult.Success();
}

/// <summary>The main job: from the content to a site that has been read again after writing.</summary>
internal sealed class SiteCommand : Command<SiteSettings>
{
    public override int Execute(CommandContext context, SiteSettings settings, CancellationToken cancellationToken)
    {
        var bench = new Workbench(settings);
        var output = new ConsoleOutput(settings);
        var outcome = output.Working(say => Make(bench, settings, say));
        var found = bench.Bag.Sorted();
        if (settings.Json)
            ConsoleOutput.Plain(DiagnosticJson.Print(found, Numbers(outcome)));
        else
            Tell(output, bench, found, outcome, settings.Into);
        return outcome is null ? ExitCode.ContentNeedsAPerson : ExitCode.Clean;
    }

    /// <summary>Nothing when an error stands in the way; the site that was there is then untouched.</summary>
    internal static WriteOutcome? Make(Workbench bench, SiteSettings settings, Action<string> say)
    {
        say("Reading the content");
        if (bench.ReadCollection(evenWithoutShop: true) is not { } collection)
            return null;
        say("Asking the relatives");
        var relatives = RelativesEngine.Ask(collection);
        bench.Bag.Add(OutlierText.Describe(relatives));
        bench.ProofByRules(collection);
        bench.Bag.Add(OxygenCheck.Describe(collection));
        ProofStep.Run(bench, collection);
        var prose = bench.RenderProse(collection);
        var theme = Theme.Read(settings.Theme, bench.Bag);
        if (bench.ReadWords() is not { } words || bench.Bag.HasErrors)
            return null;

        say("Judging tankmates");
        var mates = Acquaintances.Of(collection, relatives.Suggest);
        say("Making the pages");
        var site = new Site(collection, words, settings.UnitSystem) { Relatives = relatives, Law = bench.Law };
        var pages = PageSet.Make(site, mates, prose);
        bench.Bag.Add(PaperNotes.Of(pages));
        var files = Render(pages, new PageRenderer(theme, words), bench.Bag);
        var feed = ArrivalFeed.Make(site);
        var data = MateData.Make(site, mates).Append(WaterData.Make(site)).Append(FindData.Make(site))
            .Select(d => new SiteFile(d.Address, Encoding.UTF8.GetBytes(d.Text)));
        var style = CardPageMaker.Style(collection.Store.Cards.Size);
        bench.Bag.Add(words.Missing);
        var assets = ThemeAssets.Read(settings.Theme, bench.Bag);
        if (bench.Bag.HasErrors)
            return null;

        say("Writing the site and reading it again");
        return new SiteWriter(settings.Into, bench.Bag).Write(
            [
                .. files, .. data, new SiteFile(feed.Address, Encoding.UTF8.GetBytes(feed.Text)),
                new SiteFile(Routes.CardStyle, Encoding.UTF8.GetBytes(style)), .. assets,
            ],
            SiteCheck.Check);
    }

    private static IReadOnlyList<SiteFile> Render(IReadOnlyList<IPage> pages, PageRenderer renderer, DiagnosticBag bag)
    {
        var rendered = pages.AsParallel().AsOrdered().Select(page =>
        {
            var own = new DiagnosticBag();
            return (page.Address, Text: renderer.Render(page, own), Found: own.Sorted());
        }).ToList();
        foreach (var one in rendered)
            bag.Add(one.Found);
        return [.. rendered.Where(r => r.Text is not null)
            .Select(r => new SiteFile(r.Address, Encoding.UTF8.GetBytes(r.Text!)))];
    }

    private static void Tell(
        ConsoleOutput output, Workbench bench, IReadOnlyList<Diagnostic> found, WriteOutcome? outcome, string into)
    {
        output.Diagnostics(found, bench.Files);
        output.Line(Summary.Of(found));
        output.Line(outcome is null
            ? $"The site in {into} is as it was: nothing was written."
            : $"The site is in {into}: {outcome.Written} files written, {outcome.Unchanged} unchanged, " +
              $"{outcome.Removed} removed. Open {into}/index.html.");
    }

    private static (string, int)[] Numbers(WriteOutcome? outcome) => outcome is null
        ? [("written", 0)]
        : [("written", outcome.Written), ("unchanged", outcome.Unchanged), ("removed", outcome.Removed)];
}
