namespace CareSheets.PackingLists;

/// <summary>A supplier's list with what became of each row.</summary>
/// <param name="File">Name of the file, without its folder.</param>
public sealed record PackingList(
    string File, IReadOnlyList<MatchedLine> Lines, IReadOnlyList<SkippedRow> Skipped)
{
    /// <summary>All rows that a person may name, those too that were taken for no fish.</summary>
    public IEnumerable<MatchedLine> Readable => Lines.Concat(Skipped.Select(s => s.Read).OfType<MatchedLine>());
}
