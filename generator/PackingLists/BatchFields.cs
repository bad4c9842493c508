using System.Globalization;
using CareSheets.Arrivals;

namespace CareSheets.PackingLists;

/// <summary>A batch as the fields of its file, in YAML. What is not known is left out.</summary>
internal static class BatchFields
{
    /// <summary>In the order of the file.</summary>
    public static readonly IReadOnlyList<string> Order =
    [
        "line", "said", "entry", "taken", "perhaps", "unclear", "count", "alive", "size", "sex", "strain", "place",
        "provenance", "price", "tank", "system", "days", "water", "losses", "cause", "gone", "note",
    ];

    /// <summary>As the supplier's list is read.</summary>
    public static Dictionary<string, string> Of(MatchedLine matched)
    {
        var line = matched.Line;
        return Known(
        [
            ("line", Number(line.Line)), ("said", YamlText.Quoted(line.Said)),
            ("entry", matched.Entry ?? ""), ("taken", Taken(matched.Taken)),
            ("perhaps", List(matched.Likely.Select(c => c.Species.Key))),
            ("unclear", List(line.Unclear.Select(YamlText.Quoted))),
            ("count", Number(line.Count)), ("size", line.Size.Length > 0 ? YamlText.Quoted(line.Size + " TL") : ""),
            ("sex", line.Sex), ("strain", Text(line.Strain)), ("place", Text(line.Place)),
            ("provenance", line.Provenance), ("note", Note(line) is { Length: > 0 } note ? YamlText.Quoted(note) : ""),
        ]);
    }

    /// <summary>As it stands in an arrival.</summary>
    public static Dictionary<string, string> Of(Batch batch) => Known(
    [
        ("line", Number(batch.Line)), ("said", YamlText.Quoted(batch.Said.Value)),
        ("entry", batch.Entry?.Value ?? ""), ("taken", Taken(batch.Taken)),
        ("perhaps", List(batch.Perhaps.Select(p => p.Value))),
        ("unclear", List(batch.Unclear.Select(YamlText.Quoted))),
        ("count", Number(batch.Count?.Value)), ("alive", Number(batch.Alive?.Value)),
        ("size", batch.Size is { } size ? YamlText.Quoted(size.Text) : ""), ("sex", batch.Sex ?? ""),
        ("strain", Text(batch.Strain ?? "")), ("place", Text(batch.Place ?? "")),
        ("provenance", ProvenanceWord.Of(batch.Provenance)),
        ("price", batch.Price?.ToString(CultureInfo.InvariantCulture) ?? ""),
        ("tank", Text(batch.Tank ?? "")), ("system", Text(batch.System?.Value ?? "")), ("days", Number(batch.Days)),
        ("water", batch.Water is { } water ? YamlText.Quoted(water.Typed) : ""),
        ("losses", List(batch.Losses.Select(Loss))),
        ("cause", Text(batch.Cause ?? "")), ("gone", batch.Gone is { } gone ? Day(gone.Value) : ""),
        ("note", batch.Note is { } note ? YamlText.Quoted(note) : ""),
    ]);

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

    private static Dictionary<string, string> Known(IEnumerable<(string Name, string Value)> fields) =>
        fields.Where(f => f.Value.Length > 0).ToDictionary(f => f.Name, f => f.Value);

    private static string Loss(Loss loss) => $"{{ date: {Day(loss.Date.Value)}, count: {Number(loss.Count.Value)} }}";

    private static string Taken(NameTaken? taken) => taken is { } why ? NameTakenWord.Of(why) : "";

    private static string Text(string text) => text.Length > 0 ? YamlText.Plain(text) : "";

    private static string List(IEnumerable<string> texts) =>
        texts.ToList() is { Count: > 0 } some ? YamlText.List(some) : "";

    private static string Number(int? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
