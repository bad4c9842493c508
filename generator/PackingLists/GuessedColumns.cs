using CareSheets.Names;
using CareSheets.Names.Matching;

namespace CareSheets.PackingLists;

/// <summary>Columns of a list without headings, by what stands in them: the names, and no more.</summary>
internal static class GuessedColumns
{
    private const double LeastShare = 0.4;

    public static ListColumns? Find(IReadOnlyList<ListRow> rows, NameMatcher matcher)
    {
        var most = rows.Max(r => r.Cells.Count);
        var names = Enumerable.Range(0, most)
            .Select(i => (Column: i, Share: Share(rows, i, cell => IsName(cell, matcher))))
            .OrderByDescending(c => c.Share).ThenBy(c => c.Column).First();
        var least = most == 1 ? double.Epsilon : LeastShare; // where there is no other column, one name is enough
        return names.Share < least
            ? null
            : new ListColumns(0, new Dictionary<ColumnRole, int> { [ColumnRole.Text] = names.Column }, "");
    }

    public static bool IsName(string cell, NameMatcher matcher)
    {
        if (cell.Length is 0 or > NameReader.LongestText || !cell.Any(char.IsLetter))
            return false;
        var match = matcher.Match(WrittenName.Of(cell));
        return match.Taken is not null || match.Others.Any(o => o.Sureness > 0.5);
    }

    private static double Share(IReadOnlyList<ListRow> rows, int column, Predicate<string> test)
    {
        var filled = rows.Where(r => !r.IsEmpty).ToList();
        return filled.Count == 0 ? 0 : (double)filled.Count(r => test(r.Cell(column))) / filled.Count;
    }
}
