using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>AR: arrivals, their batches, and when they may be sold.</summary>
public static class ArrivalCodes
{
    public static readonly DiagnosticCode StrayFile = new("AR901", Warning,
        "This file is not read as an arrival, for its name does not end in .yaml",
        "Rename it, or name it as the list of an arrival.");

    public static readonly DiagnosticCode FileName = new("AR902", Error,
        "The file of this arrival is called {name}", "Rename it to {expected}: papers are called after it.");

    public static readonly DiagnosticCode NoSuchSystem = new("AR903", Error,
        "store.yaml has no system {name}", "{suggestion}");

    public static readonly DiagnosticCode MoreAlive = new("AR904", Error,
        "{alive} are alive of {count}",
        "Count again; if the supplier sent more than the list says, write so in count.");

    public static readonly DiagnosticCode MoreLost = new("AR905", Error,
        "{lost} have died of {alive} that were alive", "Count again.");

    public static readonly DiagnosticCode WrongOrder = new("AR906", Error,
        "{later} ({laterDay}) lies before {earlier} ({earlierDay})", "Check both dates.");

    public static readonly DiagnosticCode Unnamed = new("AR907", Note,
        "Nobody knows yet what this batch is", "{suggestion}");

    public static readonly DiagnosticCode DraftEntry = new("AR908", Note,
        "The entry {name} is a draft: this batch is shown to staff only", "Finish the entry before the fish are sold.");

    public static readonly DiagnosticCode JoinsEarly = new("AR909", Warning,
        "With this batch, {system} is released on {new} instead of {old}",
        "All fish that share its water wait with it. Choose another system, or write alive: once it is in.");

    public static readonly DiagnosticCode ManyLost = new("AR910", Warning,
        "{lost} of {count} have died within {days} days, which is {share} %",
        "From {limit} % on, look for the cause and ask a vet; then write what was found and done into cause.");

    public static readonly DiagnosticCode SizeBeyondAdult = new("AR911", Warning,
        "{size} is larger than a grown {name} ({adult})", "Check the size, its unit and the species.");

    public static readonly DiagnosticCode LeftOpen = new("AR912", Note,
        "The list leaves open: {unclear}",
        "Ask the supplier or look at the fish, write what it is into its field, and take the question out of " +
        "unclear. Customers are told nothing that stands in one.");

    public static readonly DiagnosticCode BagOfNoBatch = new("AR913", Warning,
        "No batch of this arrival goes into the tank {tank}, so this bag stands for none",
        "Name the tank as its batch does, or the system that the batch goes into.");

    public static readonly DiagnosticCode NotAsSaid = new("AR914", Warning,
        "The list does not say {name}, for which this batch is taken by its name",
        "Compare the two and look at the fish. Where a person knows that they are these, write taken: by hand.");

    public static readonly IReadOnlyList<DiagnosticCode> All =
    [
        StrayFile, FileName, NoSuchSystem, MoreAlive, MoreLost, WrongOrder, Unnamed, DraftEntry, JoinsEarly,
        ManyLost, SizeBeyondAdult, LeftOpen, BagOfNoBatch, NotAsSaid,
    ];
}
