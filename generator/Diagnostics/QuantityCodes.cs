using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>QT: figures that can't be read, or can't be meant.</summary>
public static class QuantityCodes
{
    public static readonly DiagnosticCode Empty = new("QT301", Error,
        "A {dimension} is expected here", "As in {example}.");

    public static readonly DiagnosticCode NotANumber = new("QT302", Error,
        "“{text}” is not a number", "{advice}");

    public static readonly DiagnosticCode NoUnit = new("QT303", Error,
        "“{text}” has no unit", "Write {suggestion}.");

    public static readonly DiagnosticCode CommaDecimal = new("QT304", Error,
        "“{text}” has a comma in a number", "Decimals have a point: write {suggestion}.");

    public static readonly DiagnosticCode Reversed = new("QT305", Error,
        "The range {text} runs backwards", "Put the smaller number first: {suggestion}.");

    public static readonly DiagnosticCode WrongKind = new("QT306", Error,
        "“{text}” is a unit of {actual}; {expected} is expected here", "As in {example}.");

    public static readonly DiagnosticCode UnknownUnit = new("QT307", Error,
        "“{text}” is not a unit that is known here", "Units of {expected}: {units}.");

    public static readonly DiagnosticCode AmbiguousUnit = new("QT308", Error,
        "“{text}” can mean more than one thing: {why}", "{way}");

    public static readonly DiagnosticCode MixedUnits = new("QT309", Error,
        "The two ends have different units", "Use one unit for both.");

    public static readonly DiagnosticCode MissingBasis = new("QT310", Error,
        "“{text}” does not say how it was measured",
        "Add TL (total length), SL (to the tail-fin base) or DW (disc width): {suggestion}.");

    public static readonly DiagnosticCode UnexpectedBasis = new("QT311", Error,
        "“{text}” has no place in this figure", "TL, SL and DW belong to the length of a fish only.");

    public static readonly DiagnosticCode Impossible = new("QT312", Error,
        "{text} can't exist", "Check the number and its unit.");

    public static readonly DiagnosticCode TooManyNumbers = new("QT313", Error,
        "“{text}” has more numbers than a range has ends", "Write two: {example}.");

    public static readonly DiagnosticCode BeyondLimits = new("QT314", Error,
        "{text} is beyond what is plausible here ({limits})",
        "Check the number and its unit; the limits are in the schema.");

    public static readonly DiagnosticCode KindsDisagree = new("QT315", Error,
        "The range {inner} ({innerText}) does not lie within {outer} ({outerText})",
        "prefers lies within keep; keep and breeding lie within survives.");

    public static readonly DiagnosticCode OpenEnd = new("QT316", Error,
        "{text} leaves an end open where one figure is needed", "Write one figure, as in {example}.");

    public static readonly IReadOnlyList<DiagnosticCode> All =
    [
        Empty, NotANumber, NoUnit, CommaDecimal, Reversed, WrongKind, UnknownUnit, AmbiguousUnit,
        MixedUnits, MissingBasis, UnexpectedBasis, Impossible, TooManyNumbers, BeyondLimits,
        KindsDisagree, OpenEnd,
    ];
}
