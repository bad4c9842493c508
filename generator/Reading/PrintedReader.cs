using System.Collections.Concurrent;
using System.Globalization;
using CareSheets.Diagnostics;
using CareSheets.Paper;

namespace CareSheets.Reading;

/// <summary>What printed.yaml holds, each card with the place of its line.</summary>
/// <param name="File">Nothing when there is no such file yet.</param>
public sealed record PrintedRecord(SourceFile? File, IReadOnlyList<Sourced<PrintedCard>> Cards);

/// <summary>Reads the record of printed cards. Where there is none, nothing has been printed yet.</summary>
public static class PrintedReader
{
    /// <summary>Nothing when the file can't be read or is not as it should be; then the bag says why.</summary>
    public static PrintedRecord? Read(string contentFolder, string schemaFolder, DiagnosticBag bag)
    {
        var path = Path.Combine(contentFolder, PrintedText.FileName);
        if (!File.Exists(path))
            return new PrintedRecord(null, []);
        var (own, files) = (new DiagnosticBag(), new ConcurrentDictionary<string, SourceFile>());
        var yaml = new CheckedYaml(schemaFolder, files, own);
        var root = yaml.Schema("printed.schema.json") is { } schema ? yaml.Read(path, schema) : null;
        var cards = root?.Fields.SelectMany(entry => Cards(entry, own)).ToList();
        bag.Add(own.Sorted());
        return cards is null || own.HasErrors ? null : new PrintedRecord(files.Values.Single(), cards);
    }

    private static IEnumerable<Sourced<PrintedCard>> Cards(YamlField entry, DiagnosticBag bag)
    {
        var items = entry.Value is YamlSequence list ? list.Items : [];
        return items.OfType<YamlMapping>().Select(item => Card(entry, new Fields(item), bag))
            .OfType<Sourced<PrintedCard>>();
    }

    private static Sourced<PrintedCard>? Card(YamlField entry, Fields fields, DiagnosticBag bag)
    {
        if (fields.Text("size") is not { } size || fields.Text("mark") is not { } mark ||
            fields.Text("printed") is not { } day)
            return null;
        if (PaperSizeText.Read(size.Value) is not { } paper)
        {
            bag.Add(CardCodes.NoSize, size.Span,
                ("size", size.Value), ("form", PaperSizeText.Form), ("limits", PaperSizeText.Limits));
            return null;
        }
        if (!DateOnly.TryParseExact(day.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, default, out var printed))
        {
            bag.Add(SchemaCodes.NoSuchDay, day.Span, ("value", day.Value));
            return null;
        }
        return new Sourced<PrintedCard>(
            new PrintedCard(entry.Key.Text, paper, fields.Text("units")?.Value, fields.Text("arrival")?.Value,
                mark.Value, printed),
            entry.Key.Span);
    }
}
