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
        foreach (var skipped in receipt.List.Skipped)
            output.Line($"Line {skipped.Line} is no fish ({SkipText.Of(skipped.Reason)}): {Short(skipped.Said)}");
        var asked = receipt.List.Lines.Count(l => l.Entry is null);
        output.Line($"{receipt.List.Lines.Count} lines: {receipt.List.Lines.Count - asked} taken, {asked} to be " +
            $"answered, {receipt.Drafts.Count} new entries drafted.");
        foreach (var draft in receipt.Drafts)
            output.Line($"Drafted from relatives: {draft.Name}. Check every line of it.");
        output.Line(receipt.IsWritten
            ? $"{receipt.File} is written. Go through it; write entry: and taken: by hand where a line is asked."
            : $"{receipt.File} would be written; nothing was.");
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

    private static string Why(MatchedLine line) => line.Perhaps.Count == 0
        ? MatchText.Why(line)
        : $"{MatchText.Why(line)}; perhaps " +
          string.Join(", ", line.Perhaps.Take(Shown).Select(c => c.Species.Key));

    private static string Short(string text) => text.Length <= 60 ? text : text[..59] + "…";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
