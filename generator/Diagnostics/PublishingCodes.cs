using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>PB: the written site.</summary>
public static class PublishingCodes
{
    public static readonly DiagnosticCode NotOurs = new("PB701", Error,
        "The folder {folder} holds files that this program did not write",
        "Name another folder with --into, or empty it.");

    public static readonly DiagnosticCode CantWrite = new("PB702", Error,
        "The site can't be written: {reason}", "Check the folder and the space on the disk.");

    public static readonly DiagnosticCode BrokenLink = new("PB703", Error,
        "The page {page} links to {target}, which does not exist", "A defect of the theme or of the program.");

    public static readonly DiagnosticCode IdTwice = new("PB704", Error,
        "The page {page} has the id {id} twice", "A defect of the theme or of the program.");

    public static readonly DiagnosticCode Headings = new("PB705", Error,
        "The page {page} has {count} main headings instead of one", "A defect of the theme or of the program.");

    public static readonly DiagnosticCode FromElsewhere = new("PB706", Error,
        "The page {page} loads {target} from elsewhere", "Pages load nothing from other hosts.");

    public static readonly DiagnosticCode UnsafeAddress = new("PB707", Error,
        "The page {page} has an address that could run a script: {target}", "A defect of the theme or of the program.");

    public static readonly IReadOnlyList<DiagnosticCode> All =
        [NotOurs, CantWrite, BrokenLink, IdTwice, Headings, FromElsewhere, UnsafeAddress];
}
