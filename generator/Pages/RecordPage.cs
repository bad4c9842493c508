namespace CareSheets.Pages;

/// <summary>How well estimates from relatives work on this very collection.</summary>
public sealed record RecordPage(
    string Address, PageFrame Frame, string Heading, string Lead, IReadOnlyList<string> Notes,
    IReadOnlyList<RecordTable> Tables) : IPage
{
    public string Template => "record";
}

/// <summary>The record of one way of leaving out, figure by figure.</summary>
public sealed record RecordTable(
    string Id, string Heading, string Lead, IReadOnlyList<string> Titles, IReadOnlyList<RecordRow> Rows);

/// <param name="Figures">Ready texts, one for each title after the first.</param>
public sealed record RecordRow(string Label, IReadOnlyList<string> Figures);
