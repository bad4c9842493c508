using System.Globalization;
using System.Text;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Relatives;

/// <summary>A draft as the text of its file.</summary>
public static class DraftText
{
    private const int MostNames = 3;

    /// <summary>Parts of an entry that may be written only with all of these.</summary>
    private static readonly (string Part, string[] Needs)[] Parts =
    [
        ("adult", ["length", "shape", "mouth"]), ("care", []),
        ("tank", ["length", "volume", "substrate", "lid"]),
        ("company", ["lives", "group", "own kind", "others", "level"]),
    ];

    public static string Print(Draft draft)
    {
        var text = new StringBuilder();
        void Line(string line) => text.Append(line).Append('\n');
        Line("---");
        Line("# yaml-language-server: $schema=../../schema/entry.schema.json");
        Line("# A draft from relatives: nobody has stated any of this for the species itself. Check every line.");
        Line($"scientificName: {draft.Name}");
        Line("draft: true");
        Line($"order: {draft.Place.Order}");
        Line($"family: {draft.Place.Family}");
        foreach (var (part, needs) in Parts)
            text.Append(Print(draft, part, needs));
        Line("evidence: from relatives");
        Line("# Still missing, and to be found by a person:");
        foreach (var missing in draft.Missing)
            Line($"# - {missing}");
        Line("---");
        Line(string.Join(' ', Prose.OfDraft));
        return text.ToString();
    }

    private static string Print(Draft draft, string part, string[] needs)
    {
        var values = draft.Under(part).ToList();
        var isWhole = needs.All(n => draft.At($"{part}.{n}") is { Text.Length: > 0 });
        var text = new StringBuilder();
        var isEmpty = !isWhole || !values.Exists(v => v.Text.Length > 0);
        var nothing = part == "care" ? "care: {}\n" : $"# {part}: can't be told from relatives\n";
        text.Append(isEmpty ? nothing : $"{part}:\n");
        foreach (var value in values)
        {
            var name = value.Path[(part.Length + 1)..];
            text.Append(CultureInfo.InvariantCulture, $"  # {name}: {value.Comment}\n");
            if (!isEmpty && value.Text.Length > 0)
                text.Append(CultureInfo.InvariantCulture, $"  {name}: {Value(value)}\n");
        }
        return text.ToString();
    }

    /// <summary>Ranges of the water carry their evidence with them, so that it is not lost in later editing.</summary>
    private static string Value(DraftValue value) =>
        value.Path.StartsWith("care.", StringComparison.Ordinal) && value.Text.Any(char.IsAsciiDigit)
            ? $"{{ keep: {value.Text}, evidence: from relatives }}"
            : value.Text;

    /// <summary>An amount rounded up, so that it never promises too little room.</summary>
    public static string Amount(Dimension dimension, double canonical) =>
        QuantityFormat.Computed(dimension, canonical, canonical, UnitSystem.Metric, Rounding.Upward).Text;

    /// <summary>A stretch with both ends rounded away from its middle, so that it is never told too narrow.</summary>
    public static string Between(Dimension dimension, double low, double high)
    {
        var small = QuantityFormat.Computed(dimension, low, low, UnitSystem.Metric, Rounding.Downward).Text;
        var large = Amount(dimension, high);
        return small == large ? large : $"{small.Split(' ')[0]}–{large}";
    }

    public static string Range(Dimension dimension, double low, double high) =>
        QuantityFormat.Computed(dimension, low, high, UnitSystem.Metric, Rounding.Inward).Text;

    public static string Who(IReadOnlyList<string> names, int most, string rank)
    {
        var more = names.Count > most ? $" and {names.Count - most} more" : "";
        return $"{string.Join(", ", names.Take(most))}{more}, of the same {rank}";
    }

    /// <summary>Who says so and how sure they are, or why nothing can be said.</summary>
    public static string Comment(Estimate estimate)
    {
        var relations = estimate.Relations;
        var who = relations.Rank is { } rank
            ? Who([.. relations.Nearest.Select(r => r.Entry.ScientificName.Value.ToString())],
                MostNames, rank.ToString().ToLowerInvariant())
            : $"all {relations.Asked} species with a figure of their own";
        return estimate.Verdict switch
        {
            EstimateVerdict.Estimated => $"from {who}; 80 % sure that the middle lies in {Sure(estimate)}",
            EstimateVerdict.Disagree => $"relatives disagree: {who}, who place the middle anywhere in {Sure(estimate)}",
            EstimateVerdict.TooFew => $"unknown: {relations.Asked} species with a figure are too few to ask",
            EstimateVerdict.AllAlike => $"unknown: all {relations.Asked} species have the same figure",
        };
    }

    private static string Sure(Estimate estimate)
    {
        var (dimension, sure) = (estimate.Figure.Declaration.Dimension, estimate.Range!.Sure);
        return QuantityFormat.Computed(dimension, sure.Low, sure.High, UnitSystem.Metric, Rounding.Nearest).Text;
    }
}
