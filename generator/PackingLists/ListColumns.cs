using System.Collections.Frozen;
using System.Globalization;
using System.Text.RegularExpressions;
using CareSheets.Names;

namespace CareSheets.PackingLists;

/// <summary>Which column of a list holds what, by its row of headings.</summary>
/// <param name="HeaderLine">Line of the headings; rows before it are a preamble.</param>
/// <param name="SizeUnit">The unit that the heading of the sizes names, or empty.</param>
internal sealed partial record ListColumns(
    int HeaderLine, IReadOnlyDictionary<ColumnRole, int> ByRole, string SizeUnit)
{
    private const int MostPreamble = 40;

    private static readonly FrozenDictionary<string, ColumnRole> Roles = DataFile.Rows("list-headings.csv")
        .ToFrozenDictionary(row => row[0], row => Enum.Parse<ColumnRole>(row[1], ignoreCase: true));

    /// <summary>The cells of the row of headings; none where there is no such row.</summary>
    public IReadOnlyList<string> Headings { get; init; } = [];

    /// <summary>Columns of numbers that nobody knows the meaning of.</summary>
    public IReadOnlyList<int> Unread { get; init; } = [];

    public int? this[ColumnRole role] => ByRole.TryGetValue(role, out var column) ? column : null;

    /// <summary>Whether a column tells how many fish there are.</summary>
    public bool HasCounts =>
        ByRole.Keys.Any(r => r is ColumnRole.Count or ColumnRole.Total or ColumnRole.Bags or ColumnRole.PerBag);

    /// <summary>The row with the most different headings, a name among them; of equals the first.</summary>
    public static ListColumns? Find(IReadOnlyList<ListRow> rows)
    {
        var found = rows.Take(MostPreamble).Where(r => !r.Cells.Any(LineSize.IsNumber)).Select(Of)
            .Where(c => c.ByRole.Count > 1 && c.HasName)
            .OrderByDescending(c => c.ByRole.Count).FirstOrDefault();
        return found ?? (rows.All(r => r.Cells.Count(c => c.Length > 0) <= 1)
            ? rows.Take(MostPreamble).Where(r => r.Cells.Any(c => Roles.ContainsKey(Words(c)))).Select(Of)
                .FirstOrDefault(c => c.HasName)
            : null);
    }

    /// <summary>Whether a row is that of the headings again, as on a new page, or has nothing but headings.</summary>
    public bool IsRepeatedBy(ListRow row) => row.Cells.SequenceEqual(Headings, StringComparer.OrdinalIgnoreCase) ||
        row.Cells.Where(c => c.Length > 0).All(c => Roles.ContainsKey(Words(c)));

    /// <summary>What the columns bear by their headings, each with its role.</summary>
    public IEnumerable<(ColumnRole Role, int Column)> Headed =>
        from i in Enumerable.Range(0, Headings.Count)
        let role = RoleOf(Headings[i])
        where role is not null
        select (role.Value, i);

    /// <summary>A column as its heading has it.</summary>
    public string Name(int column) => column < Headings.Count && Headings[column].Length > 0
        ? $"“{Headings[column]}”"
        : (column + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>A price with the currency of its heading, where it has none of its own.</summary>
    public string WithCurrency(string price) =>
        price.All(c => char.IsAsciiDigit(c) || c is '.' or ',' or ' ') &&
        this[ColumnRole.Price] is { } column && Currency().Match(Headings[column]) is { Success: true } found
            ? $"{price} {found.Value.ToUpperInvariant()}"
            : price;

    private bool HasName => this[ColumnRole.Name] is not null || this[ColumnRole.Vernacular] is not null ||
        this[ColumnRole.Text] is not null;

    private static ListColumns Of(ListRow row)
    {
        var columns = new ListColumns(row.Line, new Dictionary<ColumnRole, int>(), "") { Headings = row.Cells };
        var roles = columns.Headed.GroupBy(h => h.Role).ToDictionary(g => g.Key, g => g.First().Column);
        int? size = roles.TryGetValue(ColumnRole.Size, out var at) ? at : null;
        return columns with { ByRole = roles, SizeUnit = UnitOf(row.Cell(size)) };
    }

    private static string UnitOf(string heading)
    {
        var words = Words(heading).Split(' ');
        return words.Contains("inch") || words.Contains("in") ? "in"
            : words.Contains("mm") ? "mm" : words.Contains("cm") ? "cm" : "";
    }

    /// <summary>A total of something is none of the fish unless it says so, and a size is no heading.</summary>
    private static ColumnRole? RoleOf(string cell)
    {
        const int longest = 40;
        if (cell.Length is 0 or > longest || LineSize.Take(cell).Size.Length > 0)
            return null;
        var words = Words(cell).Split(' ');
        return (from length in Enumerable.Range(1, words.Length).Reverse()
                from start in Enumerable.Range(0, words.Length - length + 1)
                let heading = string.Join(' ', words.Skip(start).Take(length))
                where Roles.TryGetValue(heading, out var role) &&
                    (role != ColumnRole.Total || length > 1 || words.Length == 1)
                select (ColumnRole?)Roles[heading]).FirstOrDefault();
    }

    private static string Words(string cell) =>
        Slug.From(cell.Replace("ß", "ss", StringComparison.Ordinal)).Replace('-', ' ');

    [GeneratedRegex(@"[£€$]|\b(?:EUR|USD|GBP|CHF|DKK|SEK|NOK|PLN|CZK|JPY|SGD)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Currency();
}
