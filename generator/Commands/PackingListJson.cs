using System.Text.Encodings.Web;
using System.Text.Json;
using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.PackingLists;

namespace CareSheets.Commands;

/// <summary>A packing list as data: parts of each line, what it was taken for, how sure, and the runners-up.</summary>
internal static class PackingListJson
{
    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Print(Receipt? receipt, IReadOnlyList<Diagnostic> found) => JsonSerializer.Serialize(new
    {
        file = receipt?.File,
        written = receipt?.IsWritten ?? false,
        lines = receipt?.List.Lines.Select(l => Line(l, receipt.Carried)) ?? [],
        skipped = receipt?.List.Skipped
            .Select(s => new { line = s.Line, said = s.Said, why = SkipText.Of(s.Reason) }) ?? [],
        kept = receipt?.Carried.Kept.Select(b => new { line = b.Line, said = b.Said.Value }) ?? [],
        backups = receipt?.Backups ?? [],
        diagnostics = found.Select(d => new
        {
            code = d.Code.Id,
            severity = DiagnosticText.Word(d.Severity),
            file = d.Span.File,
            message = d.Message,
            hint = d.Hint,
        }),
    }, Options) + "\n";

    private static object Line(MatchedLine matched, CarriedOver carried)
    {
        var line = matched.Line;
        return new
        {
            line = line.Line,
            said = line.Said,
            name = line.NameText,
            beside = line.Beside,
            parts = NamePart.Of(line.Reading).Select(p => new { text = p.Text, italic = p.IsItalic }),
            entry = matched.Entry,
            taken = matched.Taken is { } taken ? NameTakenWord.Of(taken) : null,
            why = MatchText.Why(matched),
            newName = matched.NewName?.ToString(),
            carried = carried.Told(matched),
            perhaps = matched.Perhaps.Select(c => new
            {
                entry = c.Species.Key,
                why = MatchText.Why(c),
                sureness = Math.Round(c.Sureness, 3),
            }),
            count = line.Count,
            size = line.Size,
            mark = line.SizeMark,
            sex = line.Sex,
            strain = line.Strain,
            place = line.Place,
            provenance = line.Provenance,
            price = line.Price,
            remark = line.Remark,
            unclear = line.Unclear,
            law = matched.Law,
        };
    }
}
