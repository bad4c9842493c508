using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>NM: what the Code of nomenclature makes checkable (ICZN, 4th ed. 1999).</summary>
public static class NomenclatureCodes
{
    public static readonly DiagnosticCode Ending = new("NM901", Warning,
        "The ending of {epithet} does not agree with {genus}, which is {gender}",
        "An adjective takes the gender of its genus (ICZN Art. 31.2, 34.2): write {expected}.");

    public static readonly DiagnosticCode BeforeNames = new("NM902", Error,
        "{name} can't have been named in {year}", "Names of animals begin with 1758 (ICZN Art. 3).");

    public static readonly DiagnosticCode NamedLater = new("NM903", Error,
        "{name} was named in {year}, after this entry was reviewed", "Check the year and the day in reviewed.");

    public static readonly DiagnosticCode OtherEpithet = new("NM904", Warning,
        "{name} was first described as {original}: its epithet has changed by more than its ending",
        "An epithet keeps its spelling when the genus changes, apart from its ending (ICZN Art. 32, 34.2). " +
        "Check both names.");

    public static readonly DiagnosticCode OtherParent = new("NM905", Warning,
        "{taxon} is in {here} here, and in {listed} in the list of genera that comes with the program",
        "Write {listed}. The list may be older than what you know: if {here} is right, say so under waived: with " +
        "rule {rule} and the reason.");

    public static readonly IReadOnlyList<DiagnosticCode> All =
        [Ending, BeforeNames, NamedLater, OtherEpithet, OtherParent];
}
