using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>SC: content that does not have the form its schema asks for.</summary>
public static class SchemaCodes
{
    public static readonly DiagnosticCode Missing = new("SC201", Error,
        "The field {field} is missing", "{form}");

    public static readonly DiagnosticCode Unknown = new("SC202", Error,
        "There is no field {field} here", "{suggestion}");

    public static readonly DiagnosticCode NotInList = new("SC203", Error,
        "{field} can't be “{value}”", "One of: {allowed}.");

    public static readonly DiagnosticCode WrongType = new("SC204", Error,
        "{field} has {actual}; it takes {expected}", "{form}");

    public static readonly DiagnosticCode NoValue = new("SC205", Error,
        "{field} has no value", "{form}");

    public static readonly DiagnosticCode WrongForm = new("SC206", Error,
        "{field} does not have the right form: “{value}”", "Write {form}.");

    public static readonly DiagnosticCode WrongCount = new("SC207", Error,
        "{field} has {actual}; it needs {expected}", "{about}");

    public static readonly DiagnosticCode Twice = new("SC208", Error,
        "{field} says the same thing twice", "Keep one of the two.");

    public static readonly DiagnosticCode OutOfBounds = new("SC209", Error,
        "{field} is {value}; it must be {expected}", "{about}");

    public static readonly DiagnosticCode Other = new("SC210", Error,
        "{field} does not fit the schema ({kind})", "{about}");

    public static readonly DiagnosticCode BadSchema = new("SC211", Error,
        "The schema can't be used: {reason}", "Compare it with the last version that worked.");

    public static readonly DiagnosticCode NoSuchDay = new("SC212", Error,
        "The calendar has no day {value}", "Write year-month-day, as in 2026-10-02.");

    public static readonly IReadOnlyList<DiagnosticCode> All =
    [
        Missing, Unknown, NotInList, WrongType, NoValue, WrongForm, WrongCount, Twice, OutOfBounds,
        Other, BadSchema, NoSuchDay,
    ];
}
