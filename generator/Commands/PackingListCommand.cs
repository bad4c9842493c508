using CareSheets.Arrivals;
using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Names.Matching;
using CareSheets.PackingLists;
using CareSheets.Reading;
using CareSheets.Regulations;
using Spectre.Console.Cli;

namespace CareSheets.Commands;

/// <summary>From a supplier's list to an arrival that a person goes through.</summary>
internal sealed class PackingListCommand : Command<PackingListSettings>
{
    public override int Execute(
        CommandContext context, PackingListSettings settings, CancellationToken cancellationToken)
    {
        var bench = new Workbench(settings);
        var output = new ConsoleOutput(settings);
        var receipt = Receive(bench, settings);
        List<Diagnostic> found = [.. bench.Bag.Sorted().Where(IsOfTheList)];
        if (settings.Json)
            ConsoleOutput.Plain(PackingListJson.Print(receipt, found));
        else
        {
            output.Diagnostics(found, bench.Files);
            if (receipt is not null)
                PackingListTable.Print(receipt, settings);
        }
        var asks = receipt?.List.Lines.Any(l => l.Entry is null) ?? true;
        return bench.Bag.HasErrors || asks ? ExitCode.ContentNeedsAPerson : ExitCode.Clean;
    }

    /// <summary>All else about the content is for <c>proof</c> to say, unless it stands in the way.</summary>
    private static bool IsOfTheList(Diagnostic found) =>
        found.Severity == Severity.Error || PackingListCodes.All.Contains(found.Code);

    /// <summary>Nothing when an error stands in the way; then nothing was written.</summary>
    internal static Receipt? Receive(Workbench bench, PackingListSettings settings)
    {
        if (bench.ReadCollection() is not { } collection || bench.Bag.HasErrors)
            return null;
        var matcher = CollectionNames.Matcher(collection);
        if (Remembered(collection, matcher, bench.Bag, settings) is not { } answers)
            return null;
        var shown = settings.File.Replace('\\', '/');
        if (new PackingListReader(matcher, answers, bench.Bag).Read(settings.File, shown) is not { } list)
            return null;
        if (!Answer(list, answers, collection, bench.Bag, settings))
            return null;
        if (settings.Answers.Length > 0)
            list = new PackingListReader(matcher, answers, new DiagnosticBag()).Read(settings.File, shown)!;
        var law = new LineLaw(new RegulationFinder(bench.Law.Lists, collection.Store.Jurisdiction), collection);
        var names = new NewNames(collection);
        list = list with { Lines = [.. list.Lines.Select(l => law.Of(l) with { NewName = names.Of(l) })] };
        return Write(list, collection, answers, bench.Bag, settings);
    }

    /// <summary>Answers of the supplier's file, and those that people wrote into arrivals since.</summary>
    private static RememberedAnswers? Remembered(
        SpeciesCollection collection, NameMatcher matcher, DiagnosticBag bag, PackingListSettings settings)
    {
        if (AnswersReader.Read(settings.AnswersPath, settings.Schemas, bag) is not { } known)
            return null;
        var answers = new RememberedAnswers(known);
        foreach (var answer in AnswerHarvest.From(
            collection.Arrivals.Arrivals, settings.Supplier, settings.ArrivalsFolder, matcher))
            answers.Add(answer);
        foreach (var gone in answers.All.Where(a => !collection.Known.Entries.Contains(a.Entry)))
            Refuse(bag, settings, $"{gone.Said}={gone.Entry}", $"there is no entry {gone.Entry}");
        return bag.HasErrors ? null : answers;
    }

    private static bool Answer(
        PackingList list, RememberedAnswers answers, SpeciesCollection collection, DiagnosticBag bag,
        PackingListSettings settings)
    {
        foreach (var text in settings.Answers)
        {
            var parts = text.Split('=', 2);
            var line = list.Readable.FirstOrDefault(l =>
                l.Line.Line.ToString(System.Globalization.CultureInfo.InvariantCulture) == parts[0].Trim());
            var entry = parts.Length == 2 ? EntryNames.Slug(parts[1].Trim()) : "";
            if (line is null)
                Refuse(bag, settings, text, $"line {parts[0]} of the list names nothing");
            else if (!collection.Known.Entries.Contains(entry))
                Refuse(bag, settings, text, $"there is no entry {entry}. " +
                    CollectionLinker.Suggest(entry, collection.Known.Entries));
            else
                answers.Add(new SupplierAnswer(RememberedAnswers.Asked(line.Line), entry, settings.Day));
        }
        return !bag.HasErrors;
    }

    private static void Refuse(DiagnosticBag bag, PackingListSettings settings, string answer, string reason) =>
        bag.Add(PackingListCodes.NoSuchAnswer, SourceSpan.WholeFile(settings.AnswersPath),
            ("answer", answer), ("reason", reason));

    private static Receipt? Write(
        PackingList list, SpeciesCollection collection, RememberedAnswers answers, DiagnosticBag bag,
        PackingListSettings settings)
    {
        var file = Path.Combine(settings.ArrivalsFolder, settings.ArrivalName + ".yaml").Replace('\\', '/');
        var keptAs = settings.ArrivalName + Path.GetExtension(settings.File).ToLowerInvariant();
        if (keptAs.EndsWith(".yaml", StringComparison.Ordinal))
            keptAs += ".txt";
        var carried = new CarriedOver(
            collection.Arrivals.Arrivals.FirstOrDefault(a => a.Name == settings.ArrivalName), list);
        var receipt = new Receipt(
            list, carried, file,
            ArrivalText.Print(list, settings.Supplier, settings.Day, keptAs, carried), !settings.LookOnly);
        if (settings.LookOnly)
            return receipt;
        if (File.Exists(file) && !settings.Again)
        {
            bag.Add(PackingListCodes.ThereAlready, SourceSpan.WholeFile(file), ("file", file));
            return null;
        }
        var (staged, files) = receipt.Stage(settings, answers, keptAs);
        if (files.Commit() is not { } reason)
            return staged;
        bag.Add(PackingListCodes.CantWrite, SourceSpan.WholeFile(file), ("reason", reason));
        return null;
    }
}
