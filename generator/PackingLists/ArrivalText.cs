using System.Globalization;
using System.Text;
using CareSheets.Arrivals;

namespace CareSheets.PackingLists;

/// <summary>A packing list as the file of its arrival, ready for a person to go through.</summary>
public static class ArrivalText
{
    /// <param name="list">What was read.</param>
    /// <param name="supplier">Name of the supplier.</param>
    /// <param name="date">Day of the arrival.</param>
    /// <param name="keptAs">Name under which the supplier's file is kept beside this one.</param>
    /// <param name="carried">What stays of the arrival as it was.</param>
    public static string Print(
        PackingList list, string supplier, DateOnly date, string keptAs, CarriedOver carried)
    {
        var text = new StringBuilder();
        Line(text, "# yaml-language-server: $schema=../../schema/arrival.schema.json");
        Line(text, $"# From {OneLine(list.File)}. Where entry: is missing nobody knows yet: write the entry's file");
        Line(text, "# name and taken: by hand, and the answer is remembered for this supplier. Sizes are taken for");
        Line(text, "# total lengths (TL).");
        Line(text, $"supplier: {YamlText.Plain(supplier)}");
        Line(text, $"date: {date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}");
        Line(text, $"list: {YamlText.Plain(keptAs)}");
        if (carried.Before is { } before)
            Add(text, before);
        Line(text, "batches:");
        AddBatches(text, list, carried);
        foreach (var skipped in list.Skipped.Where(s => carried.Kept.All(b => b.Line != s.Line)))
            Line(text, $"# Line {Number(skipped.Line)} is no fish ({SkipText.Of(skipped.Reason)}): " +
                OneLine(skipped.Said));
        return text.ToString();
    }

    /// <summary>In the order of the list; what has no line comes last.</summary>
    private static void AddBatches(StringBuilder text, PackingList list, CarriedOver carried)
    {
        var kept = carried.Kept.OrderBy(b => b.Line ?? int.MaxValue).ToList();
        foreach (var line in list.Lines)
        {
            AddKept(line.Line.Line);
            Add(text, line, carried.Fields(line));
        }
        AddKept(null);

        void AddKept(int? before)
        {
            foreach (var batch in kept.TakeWhile(b => before is null || b.Line < before).ToList())
            {
                Line(text, "  # kept as people wrote it: no line of the list stands for it");
                Add(text, BatchFields.Of(batch));
                kept.Remove(batch);
            }
        }
    }

    /// <summary>What was written of the whole arrival: its hours and its measured bags.</summary>
    private static void Add(StringBuilder text, Arrival before)
    {
        if (before.Packed is { } packed)
            Line(text, $"packed: {Moment(packed.Value)}");
        if (before.Opened is { } opened)
            Line(text, $"opened: {Moment(opened.Value)}");
        if (before.Bags.Count > 0)
            Line(text, "bags:");
        foreach (var bag in before.Bags)
            Line(text, $"  - {{ {string.Join(", ", Fields(bag))} }}");
    }

    private static IEnumerable<string> Fields(MeasuredBag bag)
    {
        if (bag.System is { } system)
            yield return $"system: {YamlText.Plain(system.Value)}";
        if (bag.Tank is { } tank)
            yield return $"tank: {YamlText.Plain(tank.Value)}";
        if (bag.Hours is { } hours)
            yield return $"hours: {hours.ToString(CultureInfo.InvariantCulture)}";
        foreach (var (name, figure) in new[]
        {
            ("temperature", bag.Temperature), ("ph", bag.Acidity), ("carbonateHardness", bag.CarbonateHardness),
            ("ammonia", bag.Ammonia),
        })
        {
            if (figure is not null)
                yield return $"{name}: {YamlText.Quoted(figure.Typed)}";
        }
    }

    private static void Add(StringBuilder text, MatchedLine matched, IReadOnlyDictionary<string, string> fields)
    {
        Line(text, $"  # {OneLine(MatchText.Why(matched))}");
        foreach (var candidate in matched.Likely)
            Line(text, $"  # perhaps {MatchText.Why(candidate)}");
        foreach (var law in matched.Law)
            Line(text, $"  # LAW: {OneLine(law)}");
        Add(text, fields);
    }

    private static void Add(StringBuilder text, IReadOnlyDictionary<string, string> fields)
    {
        var begin = "  - ";
        foreach (var name in BatchFields.Order.Where(fields.ContainsKey))
        {
            Line(text, $"{begin}{name}: {fields[name]}");
            begin = "    ";
        }
    }

    private static string Moment(DateTime moment) =>
        moment.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A comment ends with its line, so no text of a supplier may bring a line end of its own.</summary>
    private static string OneLine(string text) =>
        string.Concat(text.Select(c => char.IsControl(c) || c is '\u2028' or '\u2029' or '\u0085' ? ' ' : c));

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
