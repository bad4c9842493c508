namespace CareSheets.PackingLists;

/// <summary>A row of a supplier's list.</summary>
/// <param name="Line">Line of the file, or row of the sheet, from 1.</param>
/// <param name="Cells">Texts as they are, without spaces around them.</param>
/// <param name="Said">The row word for word, in one line.</param>
internal sealed record ListRow(int Line, IReadOnlyList<string> Cells, string Said)
{
    public bool IsEmpty => Cells.All(c => c.Length == 0);

    public string Cell(int? column) => column is { } at && at < Cells.Count ? Cells[at] : "";
}
