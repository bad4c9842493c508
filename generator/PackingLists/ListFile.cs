using System.Globalization;
using CareSheets.Diagnostics;

namespace CareSheets.PackingLists;

/// <summary>A supplier's file to rows, whatever its kind.</summary>
internal sealed class ListFile(string shownPath, DiagnosticBag bag)
{
    private const string Limit = "8 MB, 20,000 rows and 100 columns";

    /// <summary>Nothing when the file can't be read; then the bag says why.</summary>
    public IReadOnlyList<ListRow>? Read(string path)
    {
        try
        {
            var size = new FileInfo(path).Length;
            if (size > ListLimits.Bytes)
                return Refuse(PackingListCodes.TooLarge, ("size", $"{Number(size)} bytes"), ("limit", Limit));
            return Rows(File.ReadAllBytes(path));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return Refuse(PackingListCodes.CantRead, ("reason", failure.Message));
        }
    }

    public IReadOnlyList<ListRow>? Rows(byte[] bytes)
    {
        if (bytes.Length == 0)
            return Refuse(PackingListCodes.NoLines);
        var rows = WorkbookList.IsWorkbook(bytes) ? Workbook(bytes) : Text(bytes);
        if (rows?.Count > ListLimits.Rows)
            return Refuse(PackingListCodes.TooLarge,
                ("size", $"more than {Number(ListLimits.Rows)} rows"), ("limit", Limit));
        return rows is null ? null : [.. rows.Where(IsReadable)];
    }

    private List<ListRow>? Text(byte[] bytes) =>
        new ListDecoder(shownPath, bag).Decode(bytes) is { } text
            ? [.. TextList.Rows(text).Take(ListLimits.Rows + 1)]
            : null;

    /// <summary>The library meets damaged workbooks with exceptions of many kinds.</summary>
    private List<ListRow>? Workbook(byte[] bytes)
    {
        try
        {
            if (!WorkbookList.IsTooLarge(bytes))
                return [.. WorkbookList.Rows(bytes)];
            Refuse(PackingListCodes.TooLarge, ("size", "it unpacks to more than 64 MB"), ("limit", Limit));
        }
        catch (Exception failure) when (failure is not OutOfMemoryException)
        {
            Refuse(PackingListCodes.CantRead, ("reason", "it begins like a workbook and is none that can be opened"));
        }
        return null;
    }

    private bool IsReadable(ListRow row)
    {
        var line = row.Line.ToString(CultureInfo.InvariantCulture);
        if (row.Said.Length > ListLimits.LineLength || row.Cells.Count > ListLimits.Columns)
        {
            bag.Add(PackingListCodes.LongLine, SourceSpan.WholeFile(shownPath),
                ("line", line), ("length", Number(row.Said.Length)));
            return false;
        }
        if (row.Cells.FirstOrDefault(IsFormula) is { } formula)
            bag.Add(PackingListCodes.Formula, SourceSpan.WholeFile(shownPath),
                ("line", line), ("text", formula.Length > 40 ? formula[..40] + "…" : formula));
        return true;
    }

    /// <summary>A spreadsheet runs texts that begin so; figures with a sign are harmless.</summary>
    private static bool IsFormula(string cell) =>
        cell.Length > 1 && cell[0] is ('=' or '@' or '+' or '-') && cell.AsSpan(1).IndexOfAny(Letters) >= 0;

    private static readonly System.Buffers.SearchValues<char> Letters =
        System.Buffers.SearchValues.Create("(!|abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ");

    private IReadOnlyList<ListRow>? Refuse(DiagnosticCode code, params (string, string)[] values)
    {
        bag.Add(code, SourceSpan.WholeFile(shownPath), values);
        return null;
    }

    private static string Number(long number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
