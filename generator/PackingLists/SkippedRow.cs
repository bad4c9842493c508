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

    /// <summary>A text without a count, where the other lines have one: a heading or a remark.</summary>
    NoCount,
}

/// <summary>A row that is no batch. It is told, so that nobody has to wonder where it went.</summary>
public sealed record SkippedRow(int Line, string Said, SkipReason Reason);
