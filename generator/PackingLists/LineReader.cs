using System.Globalization;
using System.Text.RegularExpressions;
using CareSheets.Names;

namespace CareSheets.PackingLists;

/// <summary>One row of a list to its parts.</summary>
/// <param name="columns">What stands where.</param>
/// <param name="isGenus">Whether a word is a genus or nearly one, so that a scientific name begins with it.</param>
internal sealed partial class LineReader(ListColumns columns, Func<string, bool> isGenus)
{
    /// <summary>Nothing for a row without a name; totals and freight are for the caller to see.</summary>
    public PackedLine? Read(ListRow row)
    {
        var parts = new LineParts();
        var (main, beside) = Names(row);
        if (!main.Any(char.IsLetter))
            return null;
        parts.TakeSizeCell(row.Cell(columns[ColumnRole.Size]), columns.SizeUnit);
        parts.TakeSex(row.Cell(columns[ColumnRole.Sex]));
        parts.TakeProvenance(row.Cell(columns[ColumnRole.Provenance]));
        parts.Remark = parts.TakeFrom(row.Cell(columns[ColumnRole.Remarks]), takesForms: false);
        if (row.Cell(columns[ColumnRole.Place]) is { Length: > 0 } place)
            parts.AddPlace(place);
        var name = NameOf(main, parts);
        return new PackedLine
        {
            Line = row.Line,
            Said = row.Said,
            NameText = name.Text,
            Reading = name.Reading,
            Beside = beside,
            Count = CountOf(row, parts),
            Size = parts.Size,
            SizeMark = parts.SizeMark,
            Sex = parts.Sex,
            Provenance = parts.Provenance,
            Strain = parts.Strain,
            Place = parts.Place,
            Price = row.Cell(columns[ColumnRole.Price]),
            Remark = parts.Remark,
            Unclear = parts.Unclear,
        };
    }

    private (string Main, string Beside) Names(ListRow row)
    {
        List<string> texts =
        [
            .. new[] { ColumnRole.Name, ColumnRole.Text, ColumnRole.Vernacular }
                .Select(r => row.Cell(columns[r])).Where(t => t.Length > 0),
        ];
        return (texts.FirstOrDefault() ?? "", texts.Count > 1 ? texts[1] : "");
    }

    /// <summary>
    /// The name without what stands beside it. Forms are taken off behind a genus and an epithet only: in
    /// customers' names colours are part of the name.
    /// </summary>
    private (string Text, NameReading Reading) NameOf(string main, LineParts parts)
    {
        var first = main.Split(' ')[0];
        var isScientific = first.EndsWith('.') || isGenus(Capital(first));
        var left = Capital(parts.TakeFrom(main, isScientific));
        var reading = NameReader.Read(left);
        foreach (var tag in reading.Tags)
            parts.AddForm(tag);
        if (reading is { Authorship.Length: > 0, Year: null } && !reading.Authorship.Contains('&'))
        {
            parts.AddPlace(reading.Authorship.Trim('(', ')'));
            parts.Doubt($"{reading.Authorship}: an author or a place");
        }
        return (left, reading);
    }

    /// <summary>Lists in capitals are read as if the first letter alone were one.</summary>
    private static string Capital(string text)
    {
        var letters = text.Where(char.IsLetter).ToList();
        return letters.Count > 4 && letters.TrueForAll(char.IsUpper)
            ? CodeInCapitals().Replace(text[..1] + text[1..].ToLowerInvariant(), m => m.Value.ToUpperInvariant())
            : text;
    }

    private int? CountOf(ListRow row, LineParts parts)
    {
        var (bags, per) = (Number(row, ColumnRole.Bags), Number(row, ColumnRole.PerBag));
        var counted = Number(row, ColumnRole.Count);
        if (bags is not null && per is not null && counted is not null && counted != bags * per)
            parts.Doubt(string.Create(
                CultureInfo.InvariantCulture, $"{bags} bags of {per} are {bags * per}, not {counted}"));
        var cell = row.Cell(columns[ColumnRole.Count]);
        if (counted is null && cell.Length > 0)
            parts.Doubt($"{cell}: in the column of the count");
        return counted ?? (bags is not null && per is not null ? bags * per : null);
    }

    private int? Number(ListRow row, ColumnRole role) => LineParts.CountOf(row.Cell(columns[role]));

    [GeneratedRegex(@"\b(?:lda|cw|l|c) ?\d{2,4}\b")]
    private static partial Regex CodeInCapitals();
}
