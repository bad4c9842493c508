using System.Globalization;
using CareSheets.PackingLists;
using Spectre.Console;

namespace CareSheets.Commands;

/// <summary>A packing list for people: what each line was taken for and why, and what is to be asked.</summary>
internal static class PackingListTable
{
    private const int Shown = 3;

    private const int WidthInFiles = 160;

    public static void Print(Receipt receipt, PackingListSettings settings)
    {
        if (Console.IsOutputRedirected)
            AnsiConsole.Profile.Width = WidthInFiles;
        if (!settings.Quiet)
            AnsiConsole.Write(Of(receipt.List));
        var output = new ConsoleOutput(settings);
        foreach (var line in receipt.List.Lines.Where(l => l.Law.Count > 0))
            AnsiConsole.MarkupLine(
                $"[red]LAW, line {Number(line.Line.Line)}: {Markup.Escape(string.Join("; ", line.Law))}.[/]");
        foreach (var skipped in receipt.List.Skipped.Where(s => receipt.Carried.Kept.All(b => b.Line != s.Line)))
            output.Line($"Line {skipped.Line} is no fish ({SkipText.Of(skipped.Reason)}): {Short(skipped.Said)}");
        var asked = receipt.List.Lines.Count(l => l.Entry is null);
        output.Line($"{receipt.List.Lines.Count} lines: {receipt.List.Lines.Count - asked} taken, {asked} to be " +
            $"answered, {receipt.List.Lines.Count(l => l.Line.Unclear.Count > 0)} with something unclear.");
        foreach (var line in NewNames(receipt).Concat(Carried(receipt)))
            output.Line(line);
        output.Line(receipt.IsWritten
            ? $"{receipt.File} is written. Go through it; write entry: and taken: by hand where a line is asked."
            : $"{receipt.File} would be written; nothing was.");
    }

    /// <summary>Names that nobody here knows to be valid, each with the command that drafts its entry.</summary>
    private static IEnumerable<string> NewNames(Receipt receipt)
    {
        var lines = receipt.List.Lines.Where(l => l.NewName is not null).DistinctBy(l => l.NewName).ToList();
        if (lines.Count > 0)
            yield return "New names. Where one is right, draft its entry, then read the list again with --again:";
        foreach (var line in lines)
            yield return $"  line {Number(line.Line.Line)}: arrival \"{line.NewName}\"";
    }

    private static IEnumerable<string> Carried(Receipt receipt)
    {
        foreach (var line in receipt.List.Lines)
        {
            if (receipt.Carried.Told(line) is { Length: > 0 } told)
                yield return $"Line {Number(line.Line.Line)} keeps what people wrote: {told}.";
        }
        foreach (var kept in receipt.Carried.Kept)
            yield return $"“{Short(kept.Said.Value)}” stays as people wrote it, though the list has no such line.";
        foreach (var gone in receipt.Carried.Gone)
            yield return $"What was written for “{Short(gone.Said.Value)}” goes, for the list has no such line.";
        if (receipt.Backups.Count > 0)
            yield return $"What was there, with its remarks, is kept as {string.Join(" and ", receipt.Backups)}.";
    }

    private static Table Of(PackingList list)
    {
        var table = new Table { Border = TableBorder.Simple };
        foreach (var heading in new[] { "Line", "Said", "Taken for", "Why, or perhaps", "Count", "Unclear" })
            table.AddColumn(heading);
        foreach (var line in list.Lines)
            table.AddRow(
                Number(line.Line.Line), Markup.Escape(Short(RememberedAnswers.Asked(line.Line))),
                line.Entry is { } entry ? Markup.Escape(entry) : "[yellow]?[/]",
                Markup.Escape(Why(line)), line.Line.Count is { } count ? Number(count) : "",
                Markup.Escape(string.Join("; ", line.Line.Unclear)));
        return table;
    }

    private static string Why(MatchedLine line) => !line.Likely.Any()
        ? MatchText.Why(line)
        : $"{MatchText.Why(line)}; perhaps " +
          string.Join(", ", line.Likely.Take(Shown).Select(c => c.Species.Key));

    private static string Short(string text) => text.Length <= 60 ? text : text[..59] + "…";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
