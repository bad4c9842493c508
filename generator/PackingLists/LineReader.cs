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
        var counted = columns.HasCounts || columns.Unread.Count > 0 ? null : TextCount.Of(main);
        var whole = main;
        main = counted?.Left ?? main;
        if (!main.Any(char.IsLetter))
            return null;
        parts.TakeSizeCell(row.Cell(columns[ColumnRole.Size]), columns.SizeUnit);
        parts.TakeSex(row.Cell(columns[ColumnRole.Sex]));
        parts.TakeProvenance(row.Cell(columns[ColumnRole.Provenance]));
        parts.Remark = parts.TakeFrom(row.Cell(columns[ColumnRole.Remarks]));
        if (row.Cell(columns[ColumnRole.Place]) is { Length: > 0 } place)
            parts.TakePlace(place, "place");
        var name = NameOf(main, parts);
        var count = counted is null ? CountColumns.Read(row, columns, parts) : parts.TakeCount(counted);
        return new PackedLine
        {
            Line = row.Line,
            Said = row.Said,
            NameText = name.Text.Length > 0 ? name.Text : main,
            Main = whole,
            Reading = name.Reading,
            Beside = beside,
            Count = count,
            Size = parts.Size,
            SizeMark = parts.SizeMark,
            Sex = parts.Sex,
            Provenance = parts.Provenance,
            Strain = parts.Strain,
            Place = parts.Place,
            Price = row.Cell(columns[ColumnRole.Price]) is { Length: > 0 } price
                ? columns.WithCurrency(price) : counted?.Price ?? "",
            Remark = parts.Remark,
            Unclear = parts.Unclear,
            IsLikeFish = IsLikeFish(row, parts, name.Reading),
        };
    }

    private (string Main, string Beside) Names(ListRow row)
    {
        List<string> texts =
        [
            .. new[] { ColumnRole.Name, ColumnRole.Text, ColumnRole.Vernacular }
                .Select(r => row.Cell(columns[r])).Where(t => t.Any(char.IsLetter)),
        ];
        return (texts.FirstOrDefault() ?? Nameless(row), texts.Count > 1 ? texts[1] : "");
    }

    /// <summary>A code of the trade names a fish; a size tells of one, such as that of the line above.</summary>
    private string Nameless(ListRow row) =>
        TradeCode.Read(row.Cell(columns[ColumnRole.Code])) is { } code ? code
        : LineSize.OfCell(row.Cell(columns[ColumnRole.Size]), columns.SizeUnit).Length > 0 ? row.Said
        : "";

    /// <summary>
    /// The name without what stands beside it. A strain is taken off scientific names only: in customers' names
    /// colours are part of the name. Behind a genus alone it stays in the text, for an answer to Betta koi is none
    /// to Betta red.
    /// </summary>
    private (string Text, NameReading Reading) NameOf(string main, LineParts parts)
    {
        var first = TradeCode.TakeFrom(main, []).TrimStart().Split(' ')[0];
        if (!first.EndsWith('.') && !isGenus(Capital(first)))
            return Read(Capital(parts.TakeFrom(main)), "", parts);
        var left = parts.TakeFrom(StrainWords.TakeBrackets(main, parts));
        var strain = StrainWords.In(left);
        foreach (var word in strain)
            parts.AddForm(word.Trim('(', ')', ',', '.', '/'));
        var (text, reading) = Read(Capital(StrainWords.Without(left, strain)), string.Join(' ', strain), parts);
        return (reading.Epithets.Count == 0 ? Capital(left) : text, reading);
    }

    /// <summary>A word with a capital beside a colour may be a part of the strain: then that is open as well.</summary>
    private static (string Text, NameReading Reading) Read(string name, string strain, LineParts parts)
    {
        var reading = NameReader.Read(name);
        foreach (var tag in reading.Tags)
            parts.AddForm(tag);
        if (reading is { Authorship.Length: > 0, Year: null } && !reading.Authorship.Contains('&'))
            parts.Doubt($"{reading.Authorship.Trim('(', ')')}: a mark, an author or a place" +
                (strain.Length == 0 ? "" : $", or a part of the strain {strain}"));
        return (name, reading);
    }

    /// <summary>Lists in capitals are read as if the first letter alone were one.</summary>
    private static string Capital(string text)
    {
        var letters = text.Where(char.IsLetter).ToList();
        return letters.Count > 4 && letters.TrueForAll(char.IsUpper)
            ? CodeInCapitals().Replace(text[..1] + text[1..].ToLowerInvariant(), m => m.Value.ToUpperInvariant())
            : text;
    }

    /// <summary>
    /// A name of a genus and an epithet is one of a fish. Any other text is when a size, a sex or a figure in the
    /// column of the count stands beside it: a heading or a remark has none of these.
    /// </summary>
    private bool IsLikeFish(ListRow row, LineParts parts, NameReading name) =>
        (name is { Epithets.Count: > 0, Rest.Length: 0 } && (name.IsAbbreviated || isGenus(name.Genus))) ||
        LineCount.HasFigure(row.Cell(columns[ColumnRole.Count])) ||
        ((parts.Size.Length > 0 || parts.Sex.Length > 0) && row.Cells.Count(c => c.Length > 0) > 1);

    [GeneratedRegex(@"\b(?:lda|cw|l|c) ?\d{2,4}\b")]
    private static partial Regex CodeInCapitals();
}
