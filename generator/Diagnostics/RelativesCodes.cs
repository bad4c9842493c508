using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>AU: values that do not fit what relatives say.</summary>
public static class RelativesCodes
{
    public static readonly DiagnosticCode ApartFromCongeners = new("AU501", Warning,
        "{label} {value} overlaps with no other species of {genus} ({count} compared)",
        "If it is right, leave it; if not, look for a slip in the number or the unit.");

    public static readonly IReadOnlyList<DiagnosticCode> All = [ApartFromCongeners];
}
