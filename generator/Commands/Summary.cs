using CareSheets.Diagnostics;

namespace CareSheets.Commands;

/// <summary>How much was found, in a line.</summary>
internal static class Summary
{
    public static string Of(IReadOnlyList<Diagnostic> found)
    {
        string Count(Severity severity)
        {
            var count = found.Count(d => d.Severity == severity);
            return $"{count} {DiagnosticText.Word(severity)}{(count == 1 ? "" : "s")}";
        }
        return found.Count == 0
            ? "Nothing to remark."
            : $"{Count(Severity.Error)}, {Count(Severity.Warning)}, {Count(Severity.Note)}.";
    }
}
