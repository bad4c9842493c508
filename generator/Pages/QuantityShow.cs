using CareSheets.Quantities;

namespace CareSheets.Pages;

/// <summary>A quantity as a reader sees it: in the writer's unit system, and in the other.</summary>
/// <param name="Second">Empty where there is nothing to add.</param>
public sealed record Shown(string First, string Second)
{
    public string Both => Second.Length == 0 ? First : $"{First} ({Second})";
}

/// <summary>
/// Chooses units and words for a stated range. The writer's own figure comes first and stays as
/// typed; the other system is rounded so that it never promises more than was said.
/// </summary>
public sealed class QuantityShow(Words words, UnitSystem units)
{
    public Shown Show(StatedRange range, Rounding rounding)
    {
        var shown = units == UnitSystem.Both
            ? QuantityFormat.InBoth(range, rounding)
            : [QuantityFormat.In(range, units, rounding)];
        var texts = shown.Select(Say).Distinct().ToList();
        return new Shown(texts[0], string.Join(words["sentence.list_separator"], texts.Skip(1)));
    }

    /// <summary>A figure in the reader's first system, rounded to the nearest step and without "about".</summary>
    public string ShowExactly(StatedRange range) => Spell(QuantityFormat.In(range, units, Rounding.Nearest).Text);

    /// <summary>A stated range in one system, never promising more than was said.</summary>
    public string ShowIn(StatedRange range, UnitSystem system) =>
        Spell(QuantityFormat.In(range, system, Rounding.Inward).Text);

    /// <summary>A range that nobody typed, in canonical units; the shop's own system comes first.</summary>
    public Shown Computed(Dimension dimension, double low, double high, Rounding rounding, UnitSystem first)
    {
        var second = first == UnitSystem.US ? UnitSystem.Metric : UnitSystem.US;
        UnitSystem[] systems = units == UnitSystem.Both ? [first, second] : [units];
        var texts = systems
            .Select(system => Say(QuantityFormat.Computed(dimension, low, high, system, rounding)))
            .Distinct().ToList();
        return new Shown(texts[0], string.Join(words["sentence.list_separator"], texts.Skip(1)));
    }

    private string Say(ShownRange shown) =>
        shown.IsApproximate ? words.Say("sentence.about", ("figure", Spell(shown.Text))) : Spell(shown.Text);

    /// <summary>Units that the theme has a word for are spelt out, such as years.</summary>
    private string Spell(string text)
    {
        var space = text.LastIndexOf(' ');
        return space < 0 ? text : text[..(space + 1)] + words.Or("unit." + text[(space + 1)..], text[(space + 1)..]);
    }
}
