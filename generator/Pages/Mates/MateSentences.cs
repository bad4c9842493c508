using System.Globalization;
using CareSheets.Quantities;
using CareSheets.Tankmates;

namespace CareSheets.Pages.Mates;

/// <summary>Reasons between two species as sentences of the theme, filled with names and figures.</summary>
public sealed class MateSentences(Site site)
{
    private readonly StretchText _figures = new(site.Words, site.Units);

    /// <param name="reason">A reason of a pair.</param>
    /// <param name="pair">
    /// The verdict on the pair: for one to be kept apart, a softer reason does not advise how to keep them together.
    /// </param>
    public string Of(PairReason reason, Verdict pair) => Fill(KeyOf(reason.Reason.Kind, pair),
    [
        ("one", NameOf(reason.One)), ("other", NameOf(reason.Other)),
        ("field", FieldName(reason.Reason.Field)), ("shared", Shared(reason.Reason)),
        .. reason.OfOne.Select(d => ("one_" + d.Blank, Text(d))),
        .. reason.OfOther.Select(d => ("other_" + d.Blank, Text(d))),
    ]);

    private string KeyOf(ReasonKind kind, Verdict pair) =>
        pair == Verdict.KeepApart && site.Words.Or($"mate_apart.{kind}", "").Length > 0
            ? $"mate_apart.{kind}" : $"mate.{kind}";

    /// <summary>A sentence need not use every blank; it begins with a capital whatever fills the first.</summary>
    public string Fill(string key, IReadOnlyList<(string Blank, string Value)> values) =>
        Capital(Blanks.Fill(site.Words[key], values));

    /// <summary>How many of its kind, and whether beside no other.</summary>
    public string GroupOf(Tankmate mate)
    {
        var group = Fill($"browser.group_{mate.GroupKind}",
            [("name", NameOf(mate)), ("count", mate.Group.ToString(CultureInfo.InvariantCulture))]);
        return mate.Neighbours == Neighbours.None ? site.Words.Say("browser.own_tank", ("group", group)) : group;
    }

    public string NameOf(Tankmate mate) => site.Collection.Find(mate.Name)?.VernacularName ?? mate.Name;

    public string Text(Detail detail)
    {
        if (detail.Dimension is not { } dimension)
            return site.Words[detail.Word];
        var figure = _figures.Show(dimension, detail.Range, detail.Rounding);
        return detail.Word.Length == 0 ? figure : site.Words.Say(detail.Word, ("figure", figure));
    }

    public string Shared(Reason reason) =>
        reason is { Shared: { } shared, Dimension: { } dimension }
            ? _figures.Show(dimension, shared, Rounding.Nearest)
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

    /// <summary>A word that goes on with a capital, as pH does, begins a sentence as it is.</summary>
    internal static string Capital(string sentence) =>
        sentence.Length == 0 || (sentence.Length > 1 && char.IsUpper(sentence[1]))
            ? sentence : char.ToUpperInvariant(sentence[0]) + sentence[1..];
}
