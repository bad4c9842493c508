using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>RG: lists of law and duties of written advice.</summary>
public static class RegulationCodes
{
    public static readonly DiagnosticCode PastReview = new("RG871", Warning,
        "{list} was checked as of {checked} and was to be checked again by {due}",
        "Compare it with what {authority} publishes, correct the file, and write the day under checked.");

    public static readonly DiagnosticCode NeverChecked = new("RG872", Warning,
        "Nobody has said when {list} was checked, and it binds this shop",
        "Compare it with what {authority} publishes, correct the file, and write the day under checked.");

    public static readonly DiagnosticCode Listed = new("RG873", Warning,
        "{name} is prohibited by {list}, {clause}, which names {taxon}",
        "Confirm with {authority} before you order, hold or sell it.");

    public static readonly DiagnosticCode Controlled = new("RG874", Note,
        "{name} is under control by {list}, {clause}, which names {taxon}",
        "Confirm with {authority} which papers it needs.");

    public static readonly DiagnosticCode WrongRank = new("RG875", Error,
        "{name} has not the form of a name of the rank {rank}", "Write {form}, or change the rank.");

    public static readonly DiagnosticCode AdviceLacks = new("RG881", Warning,
        "The home sheet lacks what {duty} asks for: {topics}", "{remedy}");

    public static readonly DiagnosticCode StoreLacks = new("RG882", Warning,
        "Home sheets lack what {duty} asks for: {topics}", "{remedy}");

    public static readonly IReadOnlyList<DiagnosticCode> All =
        [PastReview, NeverChecked, Listed, Controlled, WrongRank, AdviceLacks, StoreLacks];
}
