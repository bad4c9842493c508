using CareSheets.Quantities;
using CareSheets.Species;
using CareSheets.Water;

namespace CareSheets.Housing;

/// <summary>What air can bring into water of a temperature at the shop's height, against a need.</summary>
/// <param name="Need">The entry's word: ordinary, high or very high.</param>
/// <param name="Limit">Least oxygen for that need, and who says so.</param>
/// <param name="Attainable">With all the stirring and airing there is.</param>
public sealed record OxygenInWater(
    string Need, WaterLimit<Concentration> Limit, Temperature Temperature, Concentration Attainable)
{
    internal const string Field = "oxygen";

    public bool IsMet => Attainable >= Limit.Value;

    /// <summary>Nothing where the need is not stated, or the water is beyond the formula.</summary>
    public static OxygenInWater? At(Entry entry, double celsius, Store store)
    {
        if (NeedOf(entry) is not { } need || store.WaterLimits.OxygenFor(need.Word.Value) is not { } limit)
            return null;
        var temperature = Temperature.FromCelsius(celsius);
        var attainable = OxygenSaturation.At(temperature, StandardAtmosphere.At(store.Altitude));
        return attainable.Ok ? new OxygenInWater(need.Word.Value, limit, temperature, attainable.Value) : null;
    }

    internal static CareWord? NeedOf(Entry entry) =>
        entry.CareWords.FirstOrDefault(w => w.Declaration.Field == Field);
}
