using System.Globalization;
using System.Text.RegularExpressions;
using CsvHelper;
using CsvHelper.Configuration;

namespace CareSheets.PackingLists;

/// <summary>Rows of a list of separated text (RFC 4180, with whatever separates).</summary>
internal static partial class TextList
{
    private static readonly char[] Delimiters = [';', '\t', '|', ','];

    /// <summary>A sign that no list holds, where one column is all there is.</summary>
    private const char None = '\u001F';

    private const int SampleLines = 200;

    private const double LeastShare = 0.25;

    public static IEnumerable<ListRow> Rows(string text)
    {
        var configuration = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = Delimiter(text).ToString(),
            HasHeaderRecord = false,
            BadDataFound = null,
            MissingFieldFound = null,
            IgnoreBlankLines = false,
            TrimOptions = TrimOptions.Trim,
            CountBytes = false,
            MaxFieldSize = ListLimits.Bytes,
        };
        using var parser = new CsvParser(new StringReader(text), configuration);
        while (parser.Read())
        {
            var cells = parser.Record ?? [];
            var first = parser.RawRow - parser.RawRecord.TrimEnd('\r', '\n').Count(c => c == '\n');
            yield return new ListRow(first, [.. cells.Select(OneLine)], Said(parser.RawRecord, cells));
        }
    }

    /// <summary>
    /// The sign that stands most evenly in the lines; of equals the first of the list. One that few lines have is
    /// no delimiter but part of a text, such as the comma of "1,5 cm" in a list of one column.
    /// </summary>
    public static char Delimiter(string text)
    {
        var lines = text.Split('\n').Where(l => l.Trim().Length > 0).Take(SampleLines).ToList();
        return Delimiters
            .Where(d => d != ',' || !lines.TrueForAll(OnlyDecimals().IsMatch))
            .Select(d => (Sign: d, Counts: lines.Select(l => Outside(l, d)).Where(c => c > 0).ToList()))
            .Where(d => d.Counts.Count > lines.Count * LeastShare)
            .OrderByDescending(d => d.Counts.GroupBy(c => c).Max(g => g.Count() * (1 + Math.Min(g.Key, 5) / 10.0)))
            .Select(d => (char?)d.Sign).FirstOrDefault() ?? None;
    }

    /// <summary>How often a sign stands outside quotes; commas of decimals do not count.</summary>
    private static int Outside(string line, char sign)
    {
        var (count, isQuoted) = (0, false);
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '"')
                isQuoted = !isQuoted;
            var isDecimal = sign == ',' && i > 0 && i + 1 < line.Length &&
                char.IsAsciiDigit(line[i - 1]) && char.IsAsciiDigit(line[i + 1]) && line.Contains(';');
            if (line[i] == sign && !isQuoted && !isDecimal)
                count++;
        }
        return count;
    }

    private static string Said(string raw, string[] cells)
    {
        var line = raw.TrimEnd('\r', '\n');
        return line.AsSpan().ContainsAny('\r', '\n') ? string.Join(" | ", cells.Select(OneLine)) : line.Trim();
    }

    /// <summary>Every comma of the line stands in a number that letters or blanks are around.</summary>
    [GeneratedRegex(@"^(?:[^,]|(?<=(?<![\d,])\d{1,4}),(?=\d{1,3}(?![\d,])))*$")]
    private static partial Regex OnlyDecimals();

    private static string OneLine(string cell) => cell.ReplaceLineEndings(" ").Trim();
}
