using CareSheets.Pages.Waters;
using CareSheets.Quantities;
using CareSheets.Water;

namespace CareSheets.Tests.Browser;

/// <summary>One sum with its fields, and the lines that the program gives for it.</summary>
/// <param name="Fields">By name: the dimension and key of the unit, and what was typed.</param>
internal sealed record WaterCase(
    string Sum, Dictionary<string, string[]> Fields, Func<SumLines, WaterText, IReadOnlyList<string>> Lines)
{
    /// <summary>The figure of a field as the program reads it.</summary>
    public static Given<T> Read<T>(string[] field)
        where T : struct, IQuantity<T>
    {
        var unit = T.Dimension.Units.First(u => u.Key == field[1]);
        var stated = QuantityText.Parse($"{field[2]} {unit.Symbol}".Trim(), T.Dimension);
        Assert.True(stated.Ok, $"{field[2]} {unit.Symbol}");
        Assert.Equal(unit.Key, stated.Value.Unit.Key);
        return GivenFigure.From<T>(stated.Value);
    }

    /// <summary>The lines of a result, or of why there is none.</summary>
    public static IReadOnlyList<string> Told<T>(
        SumResult<T> result, WaterText text, Func<T, IReadOnlyList<string>> lines, Unit? unit = null) =>
        result.Refusal is { } refusal ? [text.Refused(refusal, unit)] : lines(result.Value);
}
