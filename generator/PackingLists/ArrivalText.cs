using System.Globalization;
using System.Text;

namespace CareSheets.PackingLists;

/// <summary>A packing list as the file of its arrival, ready for a person to go through.</summary>
public static class ArrivalText
{
    /// <param name="list">What was read.</param>
    /// <param name="supplier">Name of the supplier.</param>
    /// <param name="date">Day of the arrival.</param>
    /// <param name="keptAs">Name under which the supplier's file is kept beside this one.</param>
    public static string Print(PackingList list, string supplier, DateOnly date, string keptAs)
    {
        var text = new StringBuilder();
        Line(text, "# yaml-language-server: $schema=../../schema/arrival.schema.json");
        Line(text, $"# From {OneLine(list.File)}. Where entry: is missing nobody knows yet: write the entry's file");
        Line(text, "# name and taken: by hand, and the answer is remembered for this supplier. Sizes are taken for");
        Line(text, "# total lengths (TL).");
        Line(text, $"supplier: {YamlText.Plain(supplier)}");
        Line(text, $"date: {date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}");
        Line(text, $"list: {YamlText.Plain(keptAs)}");
        Line(text, "batches:");
        foreach (var line in list.Lines)
            Add(text, line);
        foreach (var skipped in list.Skipped)
            Line(text, $"# Line {Number(skipped.Line)} is no fish ({SkipText.Of(skipped.Reason)}): " +
                OneLine(skipped.Said));
        return text.ToString();
    }

    private static void Add(StringBuilder text, MatchedLine matched)
    {
        var line = matched.Line;
        void Field(string name, string value)
        {
            if (value.Length > 0)
                Line(text, $"    {name}: {value}");
        }
        Line(text, $"  # {MatchText.Why(matched)}");
        foreach (var candidate in matched.Perhaps)
            Line(text, $"  # perhaps {MatchText.Why(candidate)}");
        foreach (var law in matched.Law)
            Line(text, $"  # LAW: {OneLine(law)}");
        Line(text, $"  - line: {Number(line.Line)}");
        Field("said", YamlText.Quoted(line.Said));
        Field("entry", matched.Entry ?? "");
        Field("taken", matched.Taken is { } taken ? NameTakenWord.Of(taken) : "");
        Field("perhaps", matched.Perhaps.Count > 0 ? YamlText.List(matched.Perhaps.Select(c => c.Species.Key)) : "");
        Field("unclear", line.Unclear.Count > 0 ? YamlText.List(line.Unclear.Select(YamlText.Quoted)) : "");
        Field("count", line.Count is { } count ? Number(count) : "");
        Field("size", line.Size.Length > 0 ? YamlText.Quoted(line.Size + " TL") : "");
        Field("sex", line.Sex);
        Field("strain", line.Strain.Length > 0 ? YamlText.Plain(line.Strain) : "");
        Field("place", line.Place.Length > 0 ? YamlText.Plain(line.Place) : "");
        Field("provenance", line.Provenance);
        Field("note", Note(line) is { Length: > 0 } note ? YamlText.Quoted(note) : "");
    }

    /// <summary>What an arrival has no field for: its price is the customer's, not the supplier's.</summary>
    private static string Note(PackedLine line)
    {
        var parts = new List<string>();
        if (line.SizeMark.Length > 0)
            parts.Add($"size {line.SizeMark}");
        if (line.Price.Length > 0)
            parts.Add($"supplier's price {line.Price}");
        if (line.Remark.Length > 0)
            parts.Add(line.Remark);
        return string.Join("; ", parts);
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A comment ends with its line, so no text of a supplier may bring a line end of its own.</summary>
    private static string OneLine(string text) =>
        string.Concat(text.Select(c => char.IsControl(c) || c is '\u2028' or '\u2029' or '\u0085' ? ' ' : c));

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
