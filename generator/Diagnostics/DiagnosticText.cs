using System.Text;

namespace CareSheets.Diagnostics;

/// <summary>
/// Diagnostics as people read them: a first line that editors and build servers parse,
/// the source line with a caret, the hint, and the related places.
/// </summary>
public sealed class DiagnosticText(IReadOnlyDictionary<string, SourceFile> files)
{
    /// <summary>The longest part of a source line that is printed; a longer one is cut around the caret.</summary>
    public const int Width = 100;

    public static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        Severity.Note => "note",
    };

    /// <summary><c>content/species/x.md(12,8): error RD104: message</c>.</summary>
    public static string Headline(Diagnostic diagnostic) =>
        $"{Place(diagnostic.Span)}{Word(diagnostic.Severity)} {diagnostic.Code.Id}: {diagnostic.Message}";

    public string Print(Diagnostic diagnostic)
    {
        var text = new StringBuilder(Headline(diagnostic)).Append('\n');
        AppendSource(text, diagnostic.Span);
        if (diagnostic.Hint.Length > 0)
            text.Append("    hint: ").Append(diagnostic.Hint).Append('\n');
        foreach (var related in diagnostic.Related)
            text.Append("    ").Append(Place(related.Span)).Append(related.Text).Append('\n');
        return text.ToString();
    }

    private static string Place(SourceSpan span) =>
        span.IsNone ? "" : $"{span.File}({span.Start.Line},{span.Start.Column}): ";

    private void AppendSource(StringBuilder text, SourceSpan span)
    {
        if (span.IsNone || !files.TryGetValue(span.File, out var file) || file.Line(span.Start.Line) is not { } line)
            return;
        var (shown, column) = Window(line, span.Start.Column - 1);
        if (string.IsNullOrWhiteSpace(shown))
            return;
        text.Append("    ").Append(shown).Append('\n');
        text.Append("    ").Append(' ', Math.Clamp(column, 0, shown.Length)).Append('^');
        text.Append('~', Math.Clamp(Length(span) - 1, 0, Math.Max(0, shown.Length - column - 1)));
        text.Append('\n');
    }

    private static int Length(SourceSpan span) =>
        span.End.Line == span.Start.Line ? span.End.Column - span.Start.Column : 1;

    private static (string Shown, int Column) Window(string line, int column)
    {
        var from = line.Length <= Width ? 0 : Math.Clamp(column - Width / 2, 0, line.Length - Width);
        var shown = line.Substring(from, Math.Min(Width, line.Length - from));
        return (Visible(shown), column - from);
    }

    /// <summary>Control characters would move the caret or the terminal; each becomes one sign.</summary>
    private static string Visible(string line) =>
        string.Concat(line.Select(c => c == '\t' ? ' ' : char.IsControl(c) ? '\uFFFD' : c));
}
