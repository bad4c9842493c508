using System.Collections.Frozen;
using CareSheets.Names;

namespace CareSheets.PackingLists;

/// <summary>Which column of a list holds what, by its row of headings.</summary>
/// <param name="HeaderLine">Line of the headings; rows before it are a preamble.</param>
/// <param name="SizeUnit">The unit that the heading of the sizes names, or empty.</param>
internal sealed record ListColumns(
    int HeaderLine, IReadOnlyDictionary<ColumnRole, int> ByRole, string SizeUnit)
{
    private const int MostPreamble = 40;

    private static readonly FrozenDictionary<string, ColumnRole> Headings = DataFile.Rows("list-headings.csv")
        .ToFrozenDictionary(row => row[0], row => Enum.Parse<ColumnRole>(row[1], ignoreCase: true));

    public int? this[ColumnRole role] => ByRole.TryGetValue(role, out var column) ? column : null;

    /// <summary>The row with the most different headings, a name among them; of equals the first.</summary>
    public static ListColumns? Find(IReadOnlyList<ListRow> rows)
    {
        var found = rows.Take(MostPreamble).Select(Of)
            .Where(c => c.ByRole.Count > 1 && c.HasName)
            .OrderByDescending(c => c.ByRole.Count).FirstOrDefault();
        return found ?? rows.Take(MostPreamble).Where(r => r.Cells.Count(c => c.Length > 0) == 1).Select(Of)
            .FirstOrDefault(c => c.HasName && rows.All(r => r.Cells.Count(t => t.Length > 0) <= 1));
    }

    private bool HasName => this[ColumnRole.Name] is not null || this[ColumnRole.Vernacular] is not null ||
        this[ColumnRole.Text] is not null;

    private static ListColumns Of(ListRow row)
    {
        var roles = new Dictionary<ColumnRole, int>();
        var unit = "";
        for (var i = 0; i < row.Cells.Count; i++)
        {
            if (RoleOf(row.Cells[i]) is not { } role || !roles.TryAdd(role, i) || role != ColumnRole.Size)
                continue;
            var words = Words(row.Cells[i]).Split(' ');
            unit = words.Contains("inch") || words.Contains("in") ? "in"
                : words.Contains("mm") ? "mm" : words.Contains("cm") ? "cm" : "";
        }
        return new ListColumns(row.Line, roles, unit);
    }

    private static ColumnRole? RoleOf(string cell)
    {
        const int longest = 40;
        if (cell.Length is 0 or > longest)
            return null;
        var words = Words(cell).Split(' ');
        return (from length in Enumerable.Range(1, words.Length).Reverse()
                from start in Enumerable.Range(0, words.Length - length + 1)
                let heading = string.Join(' ', words.Skip(start).Take(length))
                where Headings.ContainsKey(heading)
                select (ColumnRole?)Headings[heading]).FirstOrDefault();
    }

    private static string Words(string cell) =>
        Slug.From(cell.Replace("ß", "ss", StringComparison.Ordinal)).Replace('-', ' ');
}
