using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>AU: values that do not fit what relatives say.</summary>
public static class RelativesCodes
{
    public static readonly DiagnosticCode Apart = new("AU501", Warning,
        "{label} {value}{beside} does not fit {relatives}, whose middle is foretold at {low} to {high}{unit}",
        "{first}{advice} under accepted: with figure {field}, this value and the reason.");

    public static readonly DiagnosticCode ApartBySlip = new("AU502", Warning,
        "{label} {value}{beside} does not fit {relatives}, whose middle is foretold at {low} to {high}{unit}: {slip}",
        "{first}{advice} under accepted: with figure {field}, this value and the reason.");

    public static readonly DiagnosticCode AcceptsNothing = new("AU503", Warning,
        "{label} {value} is accepted although it fits the relatives",
        "Take the acceptance out.");

    public static readonly DiagnosticCode AcceptedAnother = new("AU504", Warning,
        "{label} was accepted as {value}, which is not what the entry says now",
        "Look at the value again, then change the acceptance or take it out.");

    public static readonly DiagnosticCode StandsOut = new("AU505", Note,
        "{label} {value}{beside} stands out among {relatives}, whose middle is foretold at {low} to {high}{unit}; " +
        "this may be chance",
        "{look}If it is right, say so under accepted: with figure {field}, this value and the reason.");

    public static readonly DiagnosticCode AcceptsNoFigure = new("AU506", Warning,
        "Relatives are compared in no figure {name}, so nothing is accepted by it",
        "{suggestion} Figures are {figures}.");

    public static readonly IReadOnlyList<DiagnosticCode> All =
        [Apart, ApartBySlip, AcceptsNothing, AcceptedAnother, StandsOut, AcceptsNoFigure];
}
