using CareSheets.Quantities;
using CareSheets.Water;

namespace CareSheets.Pages.Waters;

/// <summary>Figures and refusals of the water sums in words; ammonia always with both its bases.</summary>
public sealed class WaterText(Words words)
{
    public string Say(string key, params (string Blank, string Value)[] values) => words.Say($"water.{key}", values);

    public string Both(Ammonia ammonia) => Span(Range<Ammonia>.Exactly(ammonia));

    /// <summary>One figure, or a span over what was not measured.</summary>
    public string Span(Range<Ammonia> range)
    {
        var (low, high) = (range.Min!.Value, range.Max!.Value);
        return Say(
            "both_bases",
            ("ammonia", Span(Digits.Of(low.InMilligramsOfAmmonia), Digits.Of(high.InMilligramsOfAmmonia))),
            ("nitrogen", Span(Digits.Of(low.InMilligramsOfNitrogen), Digits.Of(high.InMilligramsOfNitrogen))));
    }

    public string Span(Range<Acidity> range) =>
        Span(Digits.OfPH(range.Min!.Value.InPH), Digits.OfPH(range.Max!.Value.InPH));

    public string Refused(Refusal refusal, Unit? unit = null)
    {
        var (given, allowed) = Figures(refusal, unit);
        return Say($"refused_{refusal.Reason}", ("given", given), ("allowed", allowed));
    }

    /// <summary>What was given and what would be allowed, in a unit or the one metric readers use.</summary>
    public static (string Given, string Allowed) Figures(Refusal refusal, Unit? unit = null)
    {
        var of = unit ?? refusal.Of.For(UnitSystem.Metric);
        var allowed = (refusal.Low, refusal.High) switch
        {
            ({ } low, { } high) when low == high => Show(low, of),
            ({ } low, { } high) =>
                WithUnit($"{Digits.Of(of.FromCanonical(low))}–{Digits.Of(of.FromCanonical(high))}", of),
            ({ } low, null) => $"≥ {Show(low, of)}",
            (null, { } high) => $"≤ {Show(high, of)}",
            (null, null) => "",
        };
        return (Show(refusal.Given, of), allowed);
    }

    public static string Show(double canonical, Unit unit) =>
        WithUnit(Digits.Of(unit.FromCanonical(canonical)), unit);

    /// <summary>A figure or two; a unit without a symbol, such as pH, stands before them.</summary>
    private static string WithUnit(string figures, Unit unit) =>
        unit.Symbol.Length == 0 ? $"{unit.Key} {figures}" : $"{figures} {unit.Symbol}";

    public string Span(string low, string high) => low == high ? low : Say("span", ("low", low), ("high", high));
}
