using System.Text.RegularExpressions;

namespace CareSheets.Diagnostics;

/// <summary>Another place that helps to understand a diagnostic, with a word on why.</summary>
public sealed record RelatedSpan(SourceSpan Span, string Text);

/// <summary>
/// Something that a person should know about the content: which kind, where, and the values that
/// fill its sentences. Made in every room, printed in one place.
/// </summary>
public sealed partial record Diagnostic(
    DiagnosticCode Code,
    SourceSpan Span,
    string Path,
    IReadOnlyDictionary<string, string> Values,
    IReadOnlyList<RelatedSpan> Related)
{
    /// <summary>Of two values with the same name the later one counts.</summary>
    public static Diagnostic Of(
        DiagnosticCode code, SourceSpan span, params (string Name, string Value)[] values)
    {
        var byName = new Dictionary<string, string>();
        foreach (var (name, value) in values)
            byName[name] = value;
        return new Diagnostic(code, span, "", byName, []);
    }

    public Severity Severity => Code.Severity;

    public string Message => Fill(Code.Message);

    public string Hint => Fill(Code.Hint);

    /// <summary>Whether all that it speaks of has a place; what stands in for something missing has none.</summary>
    public bool HasPlaces => !Span.IsNone && Related.All(r => !r.Span.IsNone);

    public Diagnostic At(string path) => this with { Path = path };

    public Diagnostic With(IEnumerable<RelatedSpan> related) => this with { Related = [.. related] };

    /// <summary>By file, line, column, code and message, so that two runs print alike.</summary>
    public static int InPrintOrder(Diagnostic one, Diagnostic other)
    {
        var byFile = string.CompareOrdinal(one.Span.File, other.Span.File);
        if (byFile != 0)
            return byFile;
        var byStart = one.Span.Start.CompareTo(other.Span.Start);
        if (byStart != 0)
            return byStart;
        var byCode = string.CompareOrdinal(one.Code.Id, other.Code.Id);
        return byCode != 0 ? byCode : string.CompareOrdinal(one.Message, other.Message);
    }

    private string Fill(string template) =>
        Placeholder().Replace(template, match =>
            Values.TryGetValue(match.Groups[1].Value, out var value) ? value : match.Value);

    [GeneratedRegex(@"\{(\w+)\}")]
    private static partial Regex Placeholder();
}
