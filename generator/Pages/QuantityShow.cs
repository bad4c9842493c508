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
        if (units != UnitSystem.Both)
            return new Shown(In(range, units, rounding), "");
        var own = range.Unit.System == UnitSystem.US ? UnitSystem.US : UnitSystem.Metric;
        var other = own == UnitSystem.US ? UnitSystem.Metric : UnitSystem.US;
        var second = In(range, other, rounding);
        return second == range.Text ? new Shown(range.Text, "") : new Shown(range.Text, second);
    }

    private string In(StatedRange range, UnitSystem system, Rounding rounding)
    {
        var shown = QuantityFormat.In(range, system, rounding);
        return shown.IsApproximate ? words.Say("sentence.about", ("figure", shown.Text)) : shown.Text;
    }
}
