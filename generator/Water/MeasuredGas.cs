using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>
/// CO₂ in a water whose pH and carbonate hardness a keeper has measured: <see cref="CarbonateWater"/>, as far as
/// such readings can say anything.
/// </summary>
public static class MeasuredGas
{
    /// <summary>
    /// Kits count whole degrees, and in water of less than half a one other ions than carbonate decide the pH:
    /// common practice, no source.
    /// </summary>
    public static readonly Range<CarbonateHardness> Alkalinities =
        Range<CarbonateHardness>.AtLeast(CarbonateHardness.FromGermanDegrees(0.5));

    /// <summary>In water more acid than this, humic and mineral acids decide: common practice, no source.</summary>
    public static readonly Range<Acidity> Acidities = Range<Acidity>.AtLeast(Acidity.FromPH(5.5));

    /// <summary>From here on fishes may come to harm: common practice, no source.</summary>
    public static readonly Concentration Harmful = Concentration.FromMilligramsPerLitre(30);

    public static SumResult<CarbonateWater> In(
        CarbonateHardness alkalinity, Acidity acidity, Temperature temperature) =>
        (Unsaid(Alkalinities, alkalinity) ?? Unsaid(Acidities, acidity)) is { } refusal
            ? refusal
            : CarbonateWater.Of(alkalinity, acidity, temperature).Then(water => UnderPureGas(temperature)
                .Then<CarbonateWater>(most =>
                    water.CarbonDioxide <= most ? water : TooMuch(water.CarbonDioxide, most)));

    /// <summary>What water takes up from nothing but CO₂ at one atmosphere; no open water holds more.</summary>
    public static SumResult<Concentration> UnderPureGas(Temperature temperature) =>
        CarbonateConstants.At(temperature).Then<Concentration>(of =>
            Concentration.FromMilligramsPerLitre(of.KH * CarbonateWater.MilligramsOfGas));

    private static Refusal? Unsaid<T>(Range<T> allowed, T value)
        where T : struct, IQuantity<T> => allowed.Contains(value)
        ? null
        : new Refusal(
            RefusalReason.OtherIonsDecide, T.Dimension, value.Canonical, allowed.Min?.Canonical,
            allowed.Max?.Canonical);

    private static Refusal TooMuch(Concentration gas, Concentration most) => new(
        RefusalReason.ReadingsApart, DimensionCatalogue.Concentration, gas.InMilligramsPerLitre, null,
        most.InMilligramsPerLitre);
}
