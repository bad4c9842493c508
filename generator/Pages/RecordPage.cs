namespace CareSheets.Pages;

/// <summary>How well estimates from relatives work on this very collection.</summary>
public sealed record RecordPage(
    string Address, PageFrame Frame, string Heading, string Lead, IReadOnlyList<string> Notes,
    IReadOnlyList<RecordPart> Parts) : IPage
{
    public string Template => "record";

    /// <summary>How to read each kind of table; empty where there are none.</summary>
    public required IReadOnlyList<Fact> Guide { get; init; }
}

/// <summary>The record of one way of leaving out: what held and how far off it was, then the counts behind.</summary>
public sealed record RecordPart(
    string Id, string Heading, string Lead, IReadOnlyList<RecordTable> Tables, RecordTable Counts);

/// <summary>Figures side by side, a row for each of them.</summary>
public sealed record RecordTable(
    string Id, string Heading, string Lead, IReadOnlyList<string> Titles, IReadOnlyList<RecordRow> Rows);

/// <param name="Figures">Ready texts, one for each title after the first.</param>
public sealed record RecordRow(string Label, IReadOnlyList<string> Figures);
