using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>PF: prose against the figures of its own entry.</summary>
public static class ProseCodes
{
    public static readonly DiagnosticCode Disagrees = new("PF851", Warning,
        "“{words}” does not agree with {label}, which is {value} above",
        "Correct the one that is wrong; if it is about something else, say in the sentence about what.");

    public static readonly IReadOnlyList<DiagnosticCode> All = [Disagrees];
}
