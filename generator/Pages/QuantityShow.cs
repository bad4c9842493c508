using CareSheets.Quantities;

namespace CareSheets.Pages;

/// <summary>A quantity as a reader sees it: in the shop's unit system, and in the other.</summary>
/// <param name="Second">Empty where there is nothing to add.</param>
public sealed record Shown(string First, string Second)
{
    public string Both => Second.Length == 0 ? First : $"{First} ({Second})";
}

/// <summary>
/// Chooses units and words for a stated range. The shop's own system comes first on every page, whatever the
/// writer typed, so that figures in a list can be compared. Where the writer used that system the figure stays
/// as typed; else it is rounded so that it never promises more than was said.
/// </summary>
/// <param name="units">Which systems readers see.</param>
/// <param name="first">The shop's own.</param>
public sealed class QuantityShow(Words words, UnitSystem units, UnitSystem first)
{
    public Shown Show(StatedRange range, Rounding rounding) =>
        Say(Systems(first).Select(system => QuantityFormat.In(range, system, rounding)));

    /// <summary>A figure in the reader's first system, rounded to the nearest step and without "about".</summary>
    public string ShowExactly(StatedRange range) =>
        Spell(QuantityFormat.In(range, Systems(first)[0], Rounding.Nearest).Text);

    /// <summary>A stated range in one system, never promising more than was said.</summary>
    public string ShowIn(StatedRange range, UnitSystem system) =>
        Spell(QuantityFormat.In(range, system, Rounding.Inward).Text);

    /// <summary>A range that nobody typed, in canonical units.</summary>
    /// <param name="leading">The system that comes first.</param>
    public Shown Computed(Dimension dimension, double low, double high, Rounding rounding, UnitSystem leading) =>
        Say(Systems(leading).Select(system => QuantityFormat.Computed(dimension, low, high, system, rounding)));

    private UnitSystem[] Systems(UnitSystem leading) => units != UnitSystem.Both
        ? [units]
        : leading == UnitSystem.US ? [UnitSystem.US, UnitSystem.Metric] : [UnitSystem.Metric, UnitSystem.US];

    private Shown Say(IEnumerable<ShownRange> shown)
    {
        var texts = shown.Select(Say).Distinct().ToList();
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
