using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>RD: files that can't be read as text, front matter or YAML.</summary>
public static class ReadingCodes
{
    public static readonly DiagnosticCode Unreadable = new("RD101", Error,
        "This file can't be read: {reason}", "Check that it exists and that you may read it.");

    public static readonly DiagnosticCode NotUtf8 = new("RD102", Error,
        "This file is not UTF-8 text: byte {offset} fits no letter",
        "Save it with the encoding UTF-8.");

    public static readonly DiagnosticCode ControlCharacter = new("RD103", Error,
        "A control character (code {code}) stands here", "Delete it; it may not be visible in your editor.");

    public static readonly DiagnosticCode NoFrontMatter = new("RD104", Error,
        "The entry does not begin with front matter",
        "Put a line of three hyphens first, then the fields, then three hyphens again, then the prose.");

    public static readonly DiagnosticCode NoClosingFence = new("RD105", Error,
        "The front matter that begins here has no end",
        "Put a line of three hyphens between the fields and the prose.");

    public static readonly DiagnosticCode TooLarge = new("RD106", Error,
        "This file has {size} bytes; {limit} are the most that is read",
        "An entry has some thousand: look for something pasted by mistake.");

    public static readonly DiagnosticCode TabIndent = new("RD107", Error,
        "A tab indents this line", "YAML indents by spaces only: use two for each step.");

    public static readonly DiagnosticCode OddSpace = new("RD108", Error,
        "A space that is not an ordinary one (U+{code}) stands in front of this line",
        "Type ordinary spaces instead; it probably came with pasted text.");

    public static readonly DiagnosticCode YamlSyntax = new("RD109", Error,
        "This is not YAML: {reason}", "{remedy}");

    public static readonly DiagnosticCode DuplicateKey = new("RD110", Error,
        "The field {key} is here for the second time", "Keep one of the two.");

    public static readonly DiagnosticCode Alias = new("RD111", Error,
        "Anchors and aliases (& and *) are not read", "Write the value out, or put quotes around the text.");

    public static readonly DiagnosticCode Tag = new("RD112", Error,
        "Tags such as {tag} are not read", "Leave it out, or put quotes around the text.");

    public static readonly DiagnosticCode TooDeep = new("RD113", Error,
        "This is nested more than {limit} levels deep", "An entry needs four at most: look for a bracket too many.");

    public static readonly DiagnosticCode ComplexKey = new("RD114", Error,
        "The name of a field must be plain text", "Write it as name: value.");

    public static readonly DiagnosticCode SecondDocument = new("RD115", Error,
        "A second YAML document begins here", "Keep one: remove the line of three hyphens or dots.");

    public static readonly DiagnosticCode NotAMapping = new("RD116", Error,
        "Fields are expected here, each as name: value", "Begin with scientificName: and the name.");

    public static readonly DiagnosticCode NoProse = new("RD117", Error,
        "Nothing stands under the front matter",
        "Write what a customer at the tank would like to know, in 120 to 250 words.");

    public static readonly DiagnosticCode ByteOrderMark = new("RD118", Warning,
        "The file begins with a byte order mark", "It is ignored; save the file as UTF-8 without it.");

    public static readonly DiagnosticCode CarriageReturns = new("RD119", Note,
        "Lines end with carriage return and line feed", "They are read as line ends; other tools may trip over them.");

    public static readonly DiagnosticCode FolderMissing = new("RD120", Error,
        "There is no folder {folder}", "Run the program where the folder is, or name it with {option}.");

    public static readonly DiagnosticCode NoEntries = new("RD121", Error,
        "There is no entry in {folder}", "An entry is a file such as danio-rerio.md.");

    public static readonly DiagnosticCode StrayFile = new("RD122", Warning,
        "This file is not an entry, for its name does not end in .md", "Rename it, or move it elsewhere.");

    public static readonly DiagnosticCode Draft = new("RD123", Note,
        "This entry is a draft and is not published", "Finish it and take out the line draft: true.");

    public static readonly DiagnosticCode HyphenInside = new("RD124", Warning,
        "A line with a hyphen goes on with the text above it, and is no item of its own",
        "Begin it as far in as the item above, or put the text into one line.");

    public static readonly DiagnosticCode DraftProse = new("RD125", Error,
        "What a draft begins with is left in the prose: “{text}”",
        "Write what a customer at the tank would like to know, in 120 to 250 words, or put draft: true back.");

    public static readonly IReadOnlyList<DiagnosticCode> All =
    [
        Unreadable, NotUtf8, ControlCharacter, NoFrontMatter, NoClosingFence, TooLarge, TabIndent,
        OddSpace, YamlSyntax, DuplicateKey, Alias, Tag, TooDeep, ComplexKey, SecondDocument,
        NotAMapping, NoProse, ByteOrderMark, CarriageReturns, FolderMissing, NoEntries, StrayFile, Draft, HyphenInside,
        DraftProse,
    ];
}
