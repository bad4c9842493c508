using CareSheets.Diagnostics;
using CareSheets.Pages;
using CareSheets.Paper;
using CareSheets.Reading;
using Spectre.Console.Cli;

namespace CareSheets.Commands;

/// <summary>Tank cards to print: of chosen species, or those whose printed card is out of date.</summary>
internal sealed class CardsCommand : Command<CardsSettings>
{
    public override int Execute(CommandContext context, CardsSettings settings, CancellationToken cancellationToken)
    {
        if (EntryNames.Unknown(settings.Names, settings.Content) is { } unknown)
            return WrongUse($"There is no entry {unknown}.");
        if (settings.Arrival is { } arrival &&
            !File.Exists(Path.Combine(settings.Content, "arrivals", arrival + ".yaml")))
            return WrongUse($"There is no arrival {arrival} in {settings.Content}/arrivals.");
        var browser = settings.Browser ?? (settings.Pdf ? InstalledBrowser.Find(InstalledBrowser.Places()) : "");
        if (settings.Pdf && !File.Exists(browser))
            return WrongUse(settings.Browser is null ? InstalledBrowser.None : $"There is no browser {browser}.");
        var bench = new Workbench(settings);
        var output = new ConsoleOutput(settings);
        var record = PrintedReader.Read(settings.Content, settings.Schemas, bench.Bag);
        var (cards, sheets) = Make(bench, settings, record);
        var failure = sheets is null || !settings.Pdf ? null : PrintPdf(new PdfPrinter(browser!), sheets, settings);
        if (sheets is not null && failure is null && !settings.Trial)
            Record(bench, cards, settings);
        Tell(output, bench, cards, sheets, settings, record is { Cards.Count: > 0 });
        return failure is not null ? WrongUse(failure)
            : bench.Bag.HasErrors ? ExitCode.ContentNeedsAPerson : ExitCode.Clean;
    }

    /// <summary>No sheets when an error stands in the way, or when no card is asked for.</summary>
    private static (IReadOnlyList<ChosenCard> Cards, CardSheets? Sheets) Make(
        Workbench bench, CardsSettings settings, PrintedRecord? record)
    {
        if (bench.ReadCollection() is not { } collection || bench.ReadWords() is not { } words ||
            record is null || bench.Bag.HasErrors)
            return ([], null);
        var site = new Site(collection, words, settings.UnitSystem) { Law = bench.Law };
        var form = settings.Form(collection.Store.Cards);
        var cards = new CardChoice(site, settings, bench.Bag).Make(form, record);
        var sheets = new CardSheets(site, bench, settings);
        return (cards, cards.Count > 0 && sheets.Write(cards, form.Sheet) ? sheets : null);
    }

    private static string? PrintPdf(PdfPrinter printer, CardSheets sheets, CardsSettings settings) =>
        sheets.Documents.Select(document => Path.Combine(settings.Into, document))
            .Select(page => printer.Print(page, Path.ChangeExtension(page, ".pdf")))
            .FirstOrDefault(failure => failure is not null);

    /// <summary>What is printed now replaces what it was printed for, whatever else is on record.</summary>
    private static void Record(Workbench bench, IReadOnlyList<ChosenCard> cards, CardsSettings settings)
    {
        var before = PrintedReader.Read(settings.Content, settings.Schemas, new DiagnosticBag())!.Cards;
        var now = cards.Select(c => c.Job.OnRecord(c.Plan, settings.Day)).ToList();
        var path = Path.Combine(settings.Content, PrintedText.FileName);
        try
        {
            File.WriteAllText(path + ".next", PrintedText.Write(PrintedText.Join(before.Select(c => c.Value), now)));
            File.Move(path + ".next", path, overwrite: true);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            bench.Bag.Add(PublishingCodes.CantWrite, SourceSpan.None, ("reason", failure.Message));
        }
    }

    private static void Tell(
        ConsoleOutput output, Workbench bench, IReadOnlyList<ChosenCard> cards, CardSheets? sheets,
        CardsSettings settings, bool hasRecord)
    {
        var found = bench.Bag.Sorted();
        if (settings.Json)
        {
            ConsoleOutput.Plain(CardsJson.Print(cards, sheets, settings.Into, found));
            return;
        }
        // Notes are for whoever writes entries: proof tells them, and here they would bury what has no room.
        output.Diagnostics([.. found.Where(d => d.Severity != Severity.Note)], bench.Files);
        foreach (var line in CardLines.Make(cards, sheets, settings, bench.Bag.HasErrors, hasRecord))
            output.Line(line);
    }

    private static int WrongUse(string message)
    {
        Console.Error.WriteLine(message);
        return ExitCode.WrongUse;
    }
}
