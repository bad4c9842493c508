using System.Globalization;
using System.Text.RegularExpressions;
using CareSheets.Names.Matching;

namespace CareSheets.PackingLists;

/// <summary>
/// Columns whose headings leave something open, settled by what stands under them: which of two holds the names,
/// whether a total is one of fish or of money, and which columns of numbers nobody has read.
/// </summary>
internal sealed partial class SettledColumns(IReadOnlyList<ListRow> rows, NameMatcher matcher)
{
    private const double Most = 0.5;

    /// <summary>The columns of the list; nothing where none holds names.</summary>
    public ListColumns? Find()
    {
        if ((ListColumns.Find(rows) ?? GuessedColumns.Find(rows, matcher)) is not { } columns)
            return null;
        var below = rows.Where(r => r.Line > columns.HeaderLine && !r.IsEmpty).ToList();
        var roles = columns.ByRole.ToDictionary();
        foreach (var role in new[] { ColumnRole.Name, ColumnRole.Text, ColumnRole.Vernacular })
        {
            List<int> rivals = [.. columns.Headed.Where(h => h.Role == role).Select(h => h.Column)];
            if (rivals.Count > 1)
                roles[role] = rivals.OrderByDescending(c => Names(below, c))
                    .ThenByDescending(c => Words(below, c)).First();
        }
        if (roles.TryGetValue(ColumnRole.Text, out var text) && Words(below, text) < Most &&
            (roles.ContainsKey(ColumnRole.Name) || roles.ContainsKey(ColumnRole.Vernacular)))
            roles.Remove(ColumnRole.Text); // numbers of the supplier's own under Item
        if (roles.TryGetValue(ColumnRole.Total, out var total) && IsMoney(below, total, roles))
            roles.Remove(ColumnRole.Total);
        var headed = columns.Headed.Select(h => h.Column).Where(c => !IsRival(columns, roles, c)).ToHashSet();
        return columns with
        {
            ByRole = roles,
            Unread = [.. Enumerable.Range(0, rows.Max(r => r.Cells.Count))
                .Where(c => !headed.Contains(c) && !roles.ContainsValue(c) && IsOfNumbers(below, c))],
        };
    }

    /// <summary>A second column of counts or of prices has a heading and is not read all the same.</summary>
    private static bool IsRival(ListColumns columns, Dictionary<ColumnRole, int> roles, int column) =>
        columns.Headed.First(h => h.Column == column).Role is var role &&
        role is ColumnRole.Count or ColumnRole.Total or ColumnRole.Bags or ColumnRole.PerBag &&
        roles.TryGetValue(role, out var taken) && taken != column;

    private double Names(IReadOnlyList<ListRow> below, int column) =>
        below.Count(r => GuessedColumns.IsName(r.Cell(column), matcher));

    private static double Words(IReadOnlyList<ListRow> below, int column) =>
        Share(below, column, cell => Word().IsMatch(cell));

    private static bool IsMoney(IReadOnlyList<ListRow> below, int total, Dictionary<ColumnRole, int> roles)
    {
        if (Share(below, total, cell => LineCount.Of(cell) is not null) < Most)
            return true;
        if (!roles.TryGetValue(ColumnRole.Count, out var count) || !roles.TryGetValue(ColumnRole.Price, out var price))
            return false;
        return Share(below, total, (row, cell) => LineCount.Of(row.Cell(count)) is > 1 and var fish &&
            decimal.TryParse(row.Cell(price).Replace(',', '.'), CultureInfo.InvariantCulture, out var each) &&
            each != 1 && LineCount.Of(cell) == fish * each) > Most;
    }

    /// <summary>Numbers that do not only count the lines.</summary>
    private static bool IsOfNumbers(IReadOnlyList<ListRow> below, int column)
    {
        List<string> cells = [.. below.Select(r => r.Cell(column)).Where(c => c.Length > 0)];
        var numbers = cells.Select(LineCount.Of).OfType<int>().ToList();
        var isPosition = numbers.Count == cells.Count && numbers.Count > 1 &&
            numbers.Zip(numbers.Skip(1)).All(pair => pair.Second == pair.First + 1);
        return cells.Count(c => Figure().IsMatch(c)) > cells.Count * Most && !isPosition;
    }

    private static double Share(IReadOnlyList<ListRow> below, int column, Predicate<string> test) =>
        Share(below, column, (_, cell) => test(cell));

    private static double Share(IReadOnlyList<ListRow> below, int column, Func<ListRow, string, bool> test)
    {
        List<ListRow> filled = [.. below.Where(r => r.Cell(column).Length > 0)];
        return filled.Count == 0 ? 0 : (double)filled.Count(r => test(r, r.Cell(column))) / filled.Count;
    }

    [GeneratedRegex(@"\p{L}{3}")]
    private static partial Regex Word();

    [GeneratedRegex(@"^[£€$]?\s*\d[\d.,]*$")]
    private static partial Regex Figure();
}
