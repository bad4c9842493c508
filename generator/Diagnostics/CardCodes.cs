using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>CD: cards and what was printed of them.</summary>
public static class CardCodes
{
    public static readonly DiagnosticCode NoSize = new("CD901", Error,
        "“{size}” is not a size that a card can have", "Write {form}; a card is {limits}.");

    public static readonly DiagnosticCode LargerThanSheet = new("CD902", Error,
        "A card of {size} is larger than the sheet {sheet}",
        "Choose a smaller card, another sheet, or none, which prints each card on a page of its own size.");

    public static readonly DiagnosticCode CutName = new("CD903", Warning,
        "The names of {entry} are cut on a card of {size}",
        "Put a shorter name first under vernacularName, or choose a larger card.");

    public static readonly DiagnosticCode PrintedOfNothing = new("CD904", Warning,
        "A paper of {entry} was printed, and there is no such entry now",
        "Take the paper off the tank, then this line out of printed.yaml.");

    public static readonly DiagnosticCode LongSheet = new("CD905", Warning,
        "The home sheet of {entry} may not fit on one page", "Shorten its cautions or its lists.");

    public static readonly IReadOnlyList<DiagnosticCode> All =
        [NoSize, LargerThanSheet, CutName, PrintedOfNothing, LongSheet];
}
