using System.Globalization;
using System.IO.Compression;
using ExcelDataReader;

namespace CareSheets.PackingLists;

/// <summary>Rows of the first sheet that has any. Formulas are never run: cells are as they were saved.</summary>
internal static class WorkbookList
{
    /// <summary>Signs at the beginning of zipped workbooks and of those before 2007.</summary>
    public static bool IsWorkbook(ReadOnlySpan<byte> bytes) =>
        IsZip(bytes) || bytes.StartsWith<byte>([0xD0, 0xCF, 0x11, 0xE0]);

    /// <summary>A small file can unpack to a huge one: nothing is unpacked before its size is known.</summary>
    public static bool IsTooLarge(byte[] bytes)
    {
        if (!IsZip(bytes))
            return false;
        using var zip = new ZipArchive(new MemoryStream(bytes), ZipArchiveMode.Read);
        return zip.Entries.Sum(e => e.Length) > ListLimits.UnpackedBytes;
    }

    public static IEnumerable<ListRow> Rows(byte[] bytes)
    {
        System.Text.Encoding.RegisterProvider(System.Text.CodePagesEncodingProvider.Instance);
        using var reader = ExcelReaderFactory.CreateReader(new MemoryStream(bytes));
        do
        {
            var rows = Sheet(reader).ToList();
            if (rows.Exists(r => !r.IsEmpty))
                return rows;
        }
        while (reader.NextResult());
        return [];
    }

    private static IEnumerable<ListRow> Sheet(IExcelDataReader reader)
    {
        for (var line = 1; line <= ListLimits.Rows + 1 && reader.Read(); line++)
        {
            List<string> cells =
                [.. Enumerable.Range(0, Math.Min(reader.FieldCount, ListLimits.Columns)).Select(i => Text(reader, i))];
            yield return new ListRow(line, cells, string.Join(" | ", cells.Where(c => c.Length > 0)));
        }
    }

    private static string Text(IExcelDataReader reader, int column) => reader.GetValue(column) switch
    {
        null => "",
        string text => text.ReplaceLineEndings(" ").Trim(),
        DateTime day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        var value => Convert.ToString(value, CultureInfo.InvariantCulture) ?? "",
    };

    private static bool IsZip(ReadOnlySpan<byte> bytes) => bytes.StartsWith("PK"u8);
}
