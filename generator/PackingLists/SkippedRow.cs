namespace CareSheets.PackingLists;

/// <summary>Why a row was not taken for fish.</summary>
public enum SkipReason
{
    /// <summary>Before the headings.</summary>
    Preamble,

    /// <summary>A total, freight or the like.</summary>
    NotFish,

    /// <summary>Nothing that names anything.</summary>
    NoName,

    /// <summary>A heading of the lines below it, or the headings of the columns again.</summary>
    Heading,

    /// <summary>A sentence, such as thanks.</summary>
    Remark,

    /// <summary>Neither a name, a code, a size nor a word of the trade, where most other lines have counts.</summary>
    NoSign,
}

/// <summary>A row that is no batch. It is told, so that nobody has to wonder where it went.</summary>
/// <param name="Read">What it would be as a batch, for a person may say that it is one.</param>
public sealed record SkippedRow(int Line, string Said, SkipReason Reason, MatchedLine? Read = null);
