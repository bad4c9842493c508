using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace CareSheets.Diagnostics;

/// <summary>A diagnostic that a person has answered, with the reason.</summary>
public sealed record AcceptedDiagnostic(Diagnostic Diagnostic, string Reason);

/// <summary>
/// Diagnostics in the Static Analysis Results Interchange Format, SARIF 2.1.0 (OASIS Standard, 2020),
/// which editors and code hosts show at the line. Columns count UTF-16 units, as ours do.
/// </summary>
public static class DiagnosticSarif
{
    private const string Schema =
        "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <param name="found">In the order in which they are to be told.</param>
    /// <param name="accepted">Told as suppressed, so that readers see them only on request.</param>
    public static string Print(IReadOnlyList<Diagnostic> found, IReadOnlyList<AcceptedDiagnostic> accepted)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, Options))
        {
            writer.WriteStartObject();
            writer.WriteString("$schema", Schema);
            writer.WriteString("version", "2.1.0");
            writer.WriteStartArray("runs");
            WriteRun(writer, [.. found.Select(d => (d, (string?)null)), .. accepted.Select(Told)]);
            writer.WriteEndArray();
            writer.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static (Diagnostic, string?) Told(AcceptedDiagnostic accepted) => (accepted.Diagnostic, accepted.Reason);

    private static void WriteRun(Utf8JsonWriter writer, IReadOnlyList<(Diagnostic Found, string? Reason)> results)
    {
        var rules = results.Select(r => r.Found.Code).DistinctBy(c => c.Id)
            .OrderBy(c => c.Id, StringComparer.Ordinal).ToList();
        writer.WriteStartObject();
        writer.WriteStartObject("tool");
        writer.WriteStartObject("driver");
        writer.WriteString("name", "CareSheets");
        writer.WriteStartArray("rules");
        foreach (var rule in rules)
            WriteRule(writer, rule);
        writer.WriteEndArray();
        writer.WriteEndObject();
        writer.WriteEndObject();
        writer.WriteString("columnKind", "utf16CodeUnits");
        writer.WriteStartArray("results");
        foreach (var (diagnostic, reason) in results)
            WriteResult(writer, diagnostic, rules.FindIndex(r => r.Id == diagnostic.Code.Id), reason);
        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void WriteRule(Utf8JsonWriter writer, DiagnosticCode code)
    {
        writer.WriteStartObject();
        writer.WriteString("id", code.Id);
        WriteText(writer, "shortDescription", code.Message);
        if (code.Hint.Length > 0)
            WriteText(writer, "help", code.Hint);
        writer.WriteStartObject("defaultConfiguration");
        writer.WriteString("level", Level(code.Severity));
        writer.WriteEndObject();
        writer.WriteEndObject();
    }

    private static void WriteResult(Utf8JsonWriter writer, Diagnostic diagnostic, int rule, string? reason)
    {
        writer.WriteStartObject();
        writer.WriteString("ruleId", diagnostic.Code.Id);
        writer.WriteNumber("ruleIndex", rule);
        writer.WriteString("level", Level(diagnostic.Severity));
        WriteText(writer, "message", $"{diagnostic.Message}. {diagnostic.Hint}".TrimEnd());
        writer.WriteStartArray("locations");
        if (!diagnostic.Span.IsNone)
            WriteLocation(writer, diagnostic.Span, null);
        writer.WriteEndArray();
        writer.WriteStartArray("relatedLocations");
        foreach (var related in diagnostic.Related.Where(r => !r.Span.IsNone))
            WriteLocation(writer, related.Span, related.Text);
        writer.WriteEndArray();
        writer.WriteStartArray("suppressions"); // none: asked for, and not suppressed
        if (reason is not null)
            WriteSuppression(writer, reason);
        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void WriteSuppression(Utf8JsonWriter writer, string reason)
    {
        writer.WriteStartObject();
        writer.WriteString("kind", "inSource");
        writer.WriteString("status", "accepted");
        writer.WriteString("justification", reason);
        writer.WriteEndObject();
    }

    private static void WriteLocation(Utf8JsonWriter writer, SourceSpan span, string? message)
    {
        writer.WriteStartObject();
        writer.WriteStartObject("physicalLocation");
        writer.WriteStartObject("artifactLocation");
        writer.WriteString("uri", Address(span.File));
        writer.WriteEndObject();
        writer.WriteStartObject("region");
        writer.WriteNumber("startLine", span.Start.Line);
        writer.WriteNumber("startColumn", span.Start.Column);
        writer.WriteNumber("endLine", span.End.Line);
        writer.WriteNumber("endColumn", span.End.Column);
        writer.WriteEndObject();
        writer.WriteEndObject();
        if (message is not null)
            WriteText(writer, "message", message);
        writer.WriteEndObject();
    }

    /// <summary>A relative reference, or a file address for a path from the root (RFC 3986).</summary>
    private static string Address(string file)
    {
        var path = string.Join('/', file.Replace('\\', '/').Split('/').Select(Uri.EscapeDataString));
        return path.StartsWith('/') ? "file://" + path : path;
    }

    private static void WriteText(Utf8JsonWriter writer, string name, string text)
    {
        writer.WriteStartObject(name);
        writer.WriteString("text", text);
        writer.WriteEndObject();
    }

    private static string Level(Severity severity) => DiagnosticText.Word(severity);
}
