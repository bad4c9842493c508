using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Proofing.Prose;

/// <summary>Amounts of temperature, acidity, hardness and salt that are about the water to keep.</summary>
internal static class WaterSense
{
    private static readonly HashSet<string> Warmth = Cues.Of(
        "warmer cooler hotter colder heater thermometer temperature temperatures warmth");

    private static readonly HashSet<string> Held = Cues.Of("tank water kept run held keep hold");

    private static readonly HashSet<string> Hard = Cues.Of("hardness hard gh caco calcium");

    private static readonly HashSet<string> Carbonate = Cues.Of("carbonate kh alkalinity");

    private static readonly HashSet<string> Room = Cues.Of("room rooms tap bag bags outdoors");

    private static readonly HashSet<string> Elsewhere = Cues.Of("room tap bag outdoors air");

    private static readonly HashSet<string> Acid = Cues.Of("ph");

    private static readonly HashSet<string> Comparatives = Cues.Of(
        "cooler warmer colder lower higher above below difference");

    private static readonly HashSet<string> Steps = Cues.Of("difference rise swing drop");

    /// <summary>What may follow a bare number that counts nothing.</summary>
    private static readonly HashSet<string> Ends = Cues.Of(
        ", ; . ) in by at and is for all or will if when so as with until on through while but");

    /// <summary>Below or above these, a bare number of degrees is on the other scale or on none.</summary>
    private static readonly (double Low, double High) Celsius = (8, 42), Fahrenheit = (50, 105);

    public static ProseQuantity? Temperature(Amount amount, Clause clause, ProseToken from, ProseToken to)
    {
        var scale = amount.Unit is { Measure: Measure.Temperature } unit ? unit.Low : Guessed(amount, clause);
        var isOfASeason = clause.SentenceHas(Cues.Season);
        if (scale is null || IsDifference(amount, clause) || (isOfASeason && !IsAdvisedForASeason(clause)) ||
            clause.SentenceHas(Cues.Treatment) || IsOfARoom(clause))
            return null;
        var quantity = Quantity(ProseKind.Temperature, amount, clause, scale, from, to);
        return quantity with { Range = KindOf(clause), OfASeason = isOfASeason };
    }

    /// <summary>"Keep it at 12 °C in winter", "9 °C does no harm": said of the fish, and not of the weather.</summary>
    private static bool IsAdvisedForASeason(Clause clause) =>
        !clause.SentenceHas(Cues.Wild) && !clause.SentenceHas(Cues.Breeding) && !clause.SentenceHas(Room) &&
        (clause.Run[clause.Start].Text is "keep" or "hold" or "let" ||
            ((clause.After(0), clause.After(1)) is ("does" or "do", "no") or ("does", "not") or ("is", "fine") or
                ("suits", _) or ("will", "do") or ("is", "enough")));

    /// <summary>pH stands before its figure: "pH 6.5", "the pH should stay below 7".</summary>
    public static ProseQuantity? Acidity(Amount amount, Clause clause, ProseToken from, ProseToken to)
    {
        if (amount.Unit is not null || amount is not { Low: >= 3, High: <= 11 } ||
            !clause.HasJustBefore(Acid, 6) || clause.SentenceHas(Cues.Treatment))
            return null;
        return Plain(ProseKind.Acidity, amount.Low, amount.High, clause, from, to) with { Range = KindOf(clause) };
    }

    public static ProseQuantity? Minerals(Amount amount, Clause clause, ProseToken from, ProseToken to)
    {
        if (amount.Unit is not { } unit || clause.SentenceHas(Cues.Treatment) || clause.HasBefore(Room))
            return null;
        var isHard = clause.Has(Hard);
        (ProseKind Kind, Unit? Scale)? found = unit.Measure switch
        {
            Measure.GeneralHardness => (ProseKind.GeneralHardness, unit.Low),
            Measure.CarbonateHardness => (ProseKind.CarbonateHardness, unit.Low),
            Measure.Salinity => (ProseKind.Salinity, unit.Low),
            Measure.Dissolved when isHard => (
                clause.Has(Carbonate) ? ProseKind.CarbonateHardness : ProseKind.GeneralHardness,
                DimensionCatalogue.GeneralHardness.Canonical),
            Measure.Degrees when isHard && amount.High < 40 => (
                clause.Has(Carbonate) ? ProseKind.CarbonateHardness : ProseKind.GeneralHardness,
                DimensionCatalogue.GeneralHardness.Find("°dH")),
            _ => null,
        };
        return found is { Scale: { } scale } it
            ? Quantity(it.Kind, amount, clause, scale, from, to) with { Range = KindOf(clause) }
            : null;
    }

    /// <summary>Degrees without a scale, or a bare number beside a word of warmth: the size tells the scale.</summary>
    private static Unit? Guessed(Amount amount, Clause clause)
    {
        var isBare = amount.Unit is null;
        if (!isBare && amount.Unit!.Value.Measure != Measure.Degrees)
            return null;
        if (isBare && (!IsEnd(clause.After(0)) || !(clause.HasBefore(Warmth) || IsHeldAt(clause))))
            return null;
        if (clause.Has(Hard))
            return null;
        var scale = amount.Low >= Fahrenheit.Low && amount.High <= Fahrenheit.High ? "°F"
            : amount.Low >= (isBare ? 14 : Celsius.Low) && amount.High <= Celsius.High ? "°C" : null;
        return scale is null ? null : DimensionCatalogue.Temperature.Find(scale);
    }

    private static bool IsHeldAt(Clause clause) =>
        clause.Before(1) == "at" && Held.Contains(clause.Before(2));

    private static bool IsEnd(string next) => next.Length == 0 || Ends.Contains(next);

    /// <summary>"two degrees cooler", "by 2 °C", "fall by three degrees"</summary>
    private static bool IsDifference(Amount amount, Clause clause) =>
        clause.Before(1) is "by" or "within" || Comparatives.Contains(clause.After(0)) ||
        (amount.High < 8 && clause.Has(Cues.Difference)) || (amount.High < 12 && clause.HasJustBefore(Steps, 4));

    private static bool IsOfARoom(Clause clause) => clause.HasBefore(Elsewhere);

    /// <summary>What kind of range a sentence speaks of; for the long term unless it says otherwise.</summary>
    private static RangeKind KindOf(Clause clause) =>
        clause.SentenceHas(Cues.Borne) ? RangeKind.Survives :
        clause.SentenceHas(Cues.Breeding) ? RangeKind.Breeding :
        clause.SentenceHas(Cues.Wild) ? RangeKind.Wild : RangeKind.Keep;

    private static ProseQuantity Quantity(
        ProseKind kind, Amount amount, Clause clause, Unit unit, ProseToken from, ProseToken to) =>
        Plain(kind, unit.ToCanonical(amount.Low), unit.ToCanonical(amount.High), clause, from, to);

    private static ProseQuantity Plain(
        ProseKind kind, double low, double high, Clause clause, ProseToken from, ProseToken to) =>
        new(kind, low, high, BoundReader.Read(clause), from.Start, to.End - from.Start);
}
