using System.Text.Encodings.Web;
using System.Text.Json;

namespace CareSheets.Diagnostics;

/// <summary>Diagnostics as data for other programs: one JSON object with the same facts as the text.</summary>
public static class DiagnosticJson
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <param name="diagnostics">In the order in which they are to be told.</param>
    /// <param name="numbers">Further numbers of the run, such as files written.</param>
    public static string Print(IReadOnlyList<Diagnostic> diagnostics, params (string Name, int Value)[] numbers)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, Options))
        {
            writer.WriteStartObject();
            WriteCounts(writer, diagnostics);
            foreach (var (name, value) in numbers)
                writer.WriteNumber(name, value);
            writer.WriteStartArray("diagnostics");
            foreach (var diagnostic in diagnostics)
                Write(writer, diagnostic);
            writer.WriteEndArray();
            writer.WriteEndObject();
        }
        return System.Text.Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void WriteCounts(Utf8JsonWriter writer, IReadOnlyList<Diagnostic> diagnostics)
    {
        foreach (var severity in new[] { Severity.Error, Severity.Warning, Severity.Note })
            writer.WriteNumber(DiagnosticText.Word(severity) + "s", diagnostics.Count(d => d.Severity == severity));
    }

    private static void Write(Utf8JsonWriter writer, Diagnostic diagnostic)
    {
        writer.WriteStartObject();
        writer.WriteString("code", diagnostic.Code.Id);
        writer.WriteString("severity", DiagnosticText.Word(diagnostic.Severity));
        WriteSpan(writer, diagnostic.Span);
        writer.WriteString("path", diagnostic.Path);
        writer.WriteString("message", diagnostic.Message);
        writer.WriteString("hint", diagnostic.Hint);
        WriteValues(writer, diagnostic.Values);
        WriteRelated(writer, diagnostic.Related);
        writer.WriteEndObject();
    }

    private static void WriteSpan(Utf8JsonWriter writer, SourceSpan span)
    {
        if (span.IsNone)
            return;
        writer.WriteString("file", span.File);
        writer.WriteNumber("line", span.Start.Line);
        writer.WriteNumber("column", span.Start.Column);
        writer.WriteNumber("endLine", span.End.Line);
        writer.WriteNumber("endColumn", span.End.Column);
    }

    private static void WriteValues(Utf8JsonWriter writer, IReadOnlyDictionary<string, string> values)
    {
        writer.WriteStartObject("values");
        foreach (var (name, value) in values.OrderBy(v => v.Key, StringComparer.Ordinal))
            writer.WriteString(name, value);
        writer.WriteEndObject();
    }

    private static void WriteRelated(Utf8JsonWriter writer, IReadOnlyList<RelatedSpan> related)
    {
        writer.WriteStartArray("related");
        foreach (var place in related)
        {
            writer.WriteStartObject();
            WriteSpan(writer, place.Span);
            writer.WriteString("text", place.Text);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }
}
