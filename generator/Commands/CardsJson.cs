using System.Text.Encodings.Web;
using System.Text.Json;
using CareSheets.Diagnostics;
using CareSheets.Paper;

namespace CareSheets.Commands;

/// <summary>The cards of a run as data for other programs.</summary>
internal static class CardsJson
{
    private static readonly JsonSerializerOptions Options =
        new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Print(
        IReadOnlyList<ChosenCard> cards, CardSheets? sheets, string into, IReadOnlyList<Diagnostic> found) =>
        JsonSerializer.Serialize(
            new
            {
                documents = sheets?.Documents.Select(d => $"{into}/{d}").ToList() ?? [],
                sheets = sheets?.Sheets ?? 0,
                cards = cards.Select(c => new
                {
                    entry = c.Job.Entry.Name,
                    size = PaperSizeText.Of(c.Job.Size),
                    mark = c.Plan.Mark,
                    before = c.Before?.Mark,
                    dropped = c.Plan.Dropped,
                }),
                diagnostics = found.Select(d => new
                {
                    code = d.Code.Id,
                    severity = DiagnosticText.Word(d.Severity),
                    file = d.Span.IsNone ? null : d.Span.File,
                    line = d.Span.IsNone ? 0 : d.Span.Start.Line,
                    message = d.Message,
                    hint = d.Hint,
                }),
            },
            Options) + "\n";
}
