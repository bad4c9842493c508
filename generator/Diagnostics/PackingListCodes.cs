using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>AR951 and on: lists that suppliers send.</summary>
public static class PackingListCodes
{
    public static readonly DiagnosticCode CantRead = new("AR951", Error,
        "This file can't be read as a list: {reason}",
        "A list is text with commas, semicolons or tabs, or XLSX or XLS.");

    public static readonly DiagnosticCode TooLarge = new("AR952", Error,
        "This list is too large: {size}", "{limit} are the most that is read. Send the sheet with the fish alone.");

    public static readonly DiagnosticCode NoNames = new("AR953", Error,
        "No column of this list holds names of fish",
        "Write a heading such as Scientific name, Common name or Description over it.");

    public static readonly DiagnosticCode NoLines = new("AR954", Error,
        "This list has no line with a fish", "Check that it is the right file and the right sheet.");

    public static readonly DiagnosticCode Formula = new("AR955", Warning,
        "Line {line} has a cell that a spreadsheet would run: {text}",
        "It was read as text. Ask the supplier before you open the list in a spreadsheet.");

    public static readonly DiagnosticCode LongLine = new("AR956", Warning,
        "Line {line} has {length} characters and was left out", "No line of a list is that long: look at it.");

    public static readonly DiagnosticCode MixedEncoding = new("AR957", Warning,
        "{count} lines are not UTF-8 as the others are; they were read as Windows-1252",
        "Look at the letters with marks in them.");

    public static readonly DiagnosticCode ThereAlready = new("AR958", Error,
        "{file} is there already and was left as it is",
        "Use --again to write it anew; what was there is then kept beside it.");

    public static readonly DiagnosticCode NoSuchAnswer = new("AR959", Error,
        "The answer {answer} can't be used: {reason}",
        "An answer is a line and an entry, as in --answer 12=danio-rerio.");

    public static readonly DiagnosticCode CantWrite = new("AR960", Error,
        "The arrival can't be written: {reason}", "Nothing was changed. Check the folder and the space on the disk.");

    public static readonly DiagnosticCode UnreadColumn = new("AR961", Warning,
        "The column {column} holds numbers and was not read",
        "If it counts fish, write Qty, Packs, Per pack or Total over it and read the list again.");

    public static readonly IReadOnlyList<DiagnosticCode> All =
    [
        CantRead, TooLarge, NoNames, NoLines, Formula, LongLine, MixedEncoding, ThereAlready, NoSuchAnswer, CantWrite,
        UnreadColumn,
    ];
}
