using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>LK: names, links and citations that lead nowhere or to two places.</summary>
public static class LinkCodes
{
    public static readonly DiagnosticCode NoSuchEntry = new("LK401", Error,
        "There is no entry {name}", "{suggestion}");

    public static readonly DiagnosticCode NoSuchTerm = new("LK402", Error,
        "The glossary has no word {name}", "{suggestion}");

    public static readonly DiagnosticCode NoSuchReference = new("LK403", Error,
        "references.yaml has no work {name}", "{suggestion}");

    public static readonly DiagnosticCode RefusedLink = new("LK404", Error,
        "A link to {target} is not allowed", "Links lead to entries, to word: and to https: or mailto: addresses.");

    public static readonly DiagnosticCode Picture = new("LK405", Error,
        "A picture in the prose is not shown", "Take it out: pages load nothing from elsewhere.");

    public static readonly DiagnosticCode HtmlInProse = new("LK406", Warning,
        "HTML in the prose is printed as text", "Write Markdown, or take it out.");

    public static readonly DiagnosticCode NameTwice = new("LK407", Error,
        "The name {name} belongs to two entries", "Keep it in one of them.");

    public static readonly DiagnosticCode NoSuchCountry = new("LK408", Error,
        "{code} is not a country code of ISO 3166-1", "{suggestion}");

    public static readonly DiagnosticCode FileName = new("LK409", Error,
        "The entry of {name} is in a file with another name", "{suggestion}");

    public static readonly DiagnosticCode Parentheses = new("LK410", Error,
        "The author of {name} is written {actual}",
        "Parentheses stand if, and only if, the genus has changed (ICZN Art. 51.3): write {expected}.");

    public static readonly DiagnosticCode TwoParents = new("LK411", Error,
        "{taxon} is in {here} here and in {there} elsewhere", "Put it in one of the two everywhere.");

    public static readonly DiagnosticCode LikeHasNone = new("LK412", Error,
        "{name} has no {field} of its own to borrow", "Borrow from an entry that states it from its own evidence.");

    public static readonly DiagnosticCode SameAddress = new("LK413", Error,
        "{name} and {other} would have the same address", "Change one of the two names.");

    public static readonly DiagnosticCode UnreadableProse = new("LK414", Error,
        "The prose can't be read: {reason}", "Look for brackets or quotes nested without end.");

    public static readonly DiagnosticCode LinkToDraft = new("LK415", Error,
        "The entry {name} is a draft and has no page to lead to", "Finish it, or take out the link.");

    public static readonly DiagnosticCode FamilyUntold = new("LK416", Note,
        "families.yaml tells nothing of the family {family}",
        "Add a line with the name that customers use, or lists show the Latin one.");

    public static readonly DiagnosticCode NoSuchFamily = new("LK417", Warning,
        "No entry is in the family {family}", "{suggestion}");

    public static readonly DiagnosticCode FamilyNameTwice = new("LK418", Warning,
        "The name {name} is that of {family} too", "Choose another first name for one of them.");

    public static readonly DiagnosticCode NoSuchCompany = new("LK419", Warning,
        "No entry is {name} or belongs to it, so nothing is kept apart from it", "{suggestion}");

    public static readonly DiagnosticCode NoLink = new("LK420", Warning,
        "“{text}” is no link and is printed as it stands", "{suggestion}");

    public static readonly IReadOnlyList<DiagnosticCode> All =
    [
        NoSuchEntry, NoSuchTerm, NoSuchReference, RefusedLink, Picture, HtmlInProse, NameTwice,
        NoSuchCountry, FileName, Parentheses, TwoParents, LikeHasNone, SameAddress, UnreadableProse, LinkToDraft,
        FamilyUntold, NoSuchFamily, FamilyNameTwice, NoSuchCompany, NoLink,
    ];
}
