using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>PR: what the fish room's own rules have against an entry, and mistakes in those rules.</summary>
public static class ProofingCodes
{
    private const string Waive =
        "{remedy} {reason} ({evidence}). " +
        "If it is right as it stands, say so under waived: with rule {rule} and the reason.";

    public static readonly DiagnosticCode Wrong = new("PR801", Error, "{says}: {found}", Waive);

    public static readonly DiagnosticCode Doubtful = new("PR802", Warning, "{says}: {found}", Waive);

    public static readonly DiagnosticCode Remark = new("PR803", Note, "{says}: {found}", Waive);

    public static readonly DiagnosticCode NoRule = new("PR804", Error,
        "There is no rule {name} to waive", "{suggestion}");

    public static readonly DiagnosticCode WaivesNothing = new("PR805", Warning,
        "The rule {name} is waived, and has nothing against this entry", "Take the waiver out.");

    public static readonly DiagnosticCode NoCondition = new("PR806", Error,
        "“{text}” can't be read as a condition: {reason}",
        "A field, how it should be, and a value: " +
        "tank.lid is tight, lowest care.ph is at least 7, tank.needs has wood.");

    public static readonly DiagnosticCode NoField = new("PR807", Error,
        "Entries have no field {name} to ask about", "{suggestion}");

    public static readonly DiagnosticCode BadExample = new("PR808", Error,
        "The example under {example} of {rule} does not show it: {outcome}",
        "Change the example, or the rule if the example is right.");

    public static readonly DiagnosticCode NotTold = new("PR809", Warning,
        "hazards.yaml tells nobody of the hazard {kind}, which every aquarium has",
        "Add one of that kind without a condition.");

    public static readonly IReadOnlyList<DiagnosticCode> All =
        [Wrong, Doubtful, Remark, NoRule, WaivesNothing, NoCondition, NoField, BadExample, NotTold];
}
