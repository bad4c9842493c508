using System.Globalization;

namespace CareSheets.PackingLists;

/// <summary>
/// How many fish a row promises by its columns: the total that it states, else its packs times what is in each.
/// Where two of them disagree, a person has to say.
/// </summary>
internal static class CountColumns
{
    public static int? Read(ListRow row, ListColumns columns, LineParts parts)
    {
        int? Number(ColumnRole role) => LineCount.Of(row.Cell(columns[role]));
        var (bags, per) = (Number(ColumnRole.Bags), Number(ColumnRole.PerBag));
        var (counted, total) = (Number(ColumnRole.Count), Number(ColumnRole.Total));
        var stated = total ?? counted;
        if (stated is null && Odd(row, columns) is { Length: > 0 } odd)
            return parts.TakeOddCount(odd);
        var packed = bags is { } packs && per is { } each ? (long)packs * each : (long?)null;
        if (packed is { } fish && stated is not null && stated != fish)
            parts.Doubt(string.Create(
                CultureInfo.InvariantCulture, $"{bags} bags of {per} are {fish}, not {stated}"));
        else if (counted is not null && total is not null && counted != total && counted * (long?)bags != total)
            parts.Doubt(string.Create(CultureInfo.InvariantCulture, $"how many: {counted}, or {total} in all"));
        else if (stated is null && packed is null && (bags ?? per) is { } half)
            parts.Doubt(string.Create(CultureInfo.InvariantCulture,
                $"how many: {half} {(per is null ? "bags" : "in each bag")}"));
        if (bags is null && stated is { } alone)
            parts.DoubtPairs(alone.ToString(CultureInfo.InvariantCulture));
        return stated ?? (packed is > 0 and <= 100_000 ? (int)packed : null);
    }

    /// <summary>What stands in place of a plain number, such as 6 pr.</summary>
    private static string Odd(ListRow row, ListColumns columns) =>
        row.Cell(columns[ColumnRole.Total]) is { Length: > 0 } total ? total : row.Cell(columns[ColumnRole.Count]);
}
