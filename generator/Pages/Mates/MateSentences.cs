using CareSheets.Quantities;
using CareSheets.Tankmates;

namespace CareSheets.Pages.Mates;

/// <summary>Reasons between two species as sentences of the theme, filled with names and figures.</summary>
public sealed class MateSentences(Site site)
{
    private readonly StretchText _figures = new(site.Words, site.Units);

    public string Of(PairReason reason) => Fill($"mate.{reason.Reason.Kind}",
    [
        ("one", NameOf(reason.One)), ("other", NameOf(reason.Other)),
        ("field", FieldName(reason.Reason.Field)), ("shared", Shared(reason.Reason)),
        .. reason.OfOne.Select(d => ("one_" + d.Blank, Text(d))),
        .. reason.OfOther.Select(d => ("other_" + d.Blank, Text(d))),
    ]);

    /// <summary>A sentence need not use every blank; it begins with a capital whatever fills the first.</summary>
    public string Fill(string key, IReadOnlyList<(string Blank, string Value)> values) =>
        Capital(Blanks.Fill(site.Words[key], values));

    public string NameOf(Tankmate mate) => site.Collection.Find(mate.Name)?.VernacularName ?? mate.Name;

    public string Text(Detail detail) => detail.Dimension is { } dimension
        ? _figures.Show(dimension, detail.Range, detail.Rounding)
        : site.Words[detail.Word];

    public string Shared(Reason reason) =>
        reason is { Shared: { } shared, Dimension: { } dimension }
            ? _figures.Show(dimension, shared, Rounding.Inward)
            : "";

    /// <summary>A care range by its label, another field by its own word.</summary>
    public string FieldName(string field)
    {
        if (field.Length == 0)
            return "";
        return site.Collection.Ranges.FirstOrDefault(r => r.Field == field) is { } range
            ? RangeRowMaker.LabelOf(range, site.Words)
            : site.Words[$"mate_field.{field}"];
    }

    internal static string Capital(string sentence) =>
        sentence.Length == 0 ? sentence : char.ToUpperInvariant(sentence[0]) + sentence[1..];
}
