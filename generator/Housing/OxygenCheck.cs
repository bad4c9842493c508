using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Housing;

/// <summary>
/// Finds needs of oxygen that no air can meet, at the temperature the entry states and the shop's height.
/// </summary>
public static class OxygenCheck
{
    public static IEnumerable<Diagnostic> Describe(SpeciesCollection collection) =>
        collection.Entries.Select(e => Describe(e, collection)).OfType<Diagnostic>();

    /// <summary>An error where even the coolest water is too poor, a warning where the warmest is.</summary>
    private static Diagnostic? Describe(Entry entry, SpeciesCollection collection)
    {
        var field = collection.Ranges.FirstOrDefault(r => r.Dimension == DimensionCatalogue.Temperature)?.Field ?? "";
        if (entry.Range(field)?.Of(RangeKind.Keep)?.Range.Value is not { } keep)
            return null;
        var cool = Unmet(entry, keep.Low, collection.Store);
        return (cool ?? Unmet(entry, keep.High, collection.Store)) is { } unmet
            ? Tell(cool is null ? WaterCodes.OxygenAtWarmEnd : WaterCodes.OxygenUnattainable, entry, unmet, collection)
            : null;
    }

    private static OxygenInWater? Unmet(Entry entry, double? celsius, Store store) =>
        celsius is { } value && OxygenInWater.At(entry, value, store) is { IsMet: false } oxygen ? oxygen : null;

    private static Diagnostic Tell(
        DiagnosticCode code, Entry entry, OxygenInWater oxygen, SpeciesCollection collection) => Diagnostic.Of(
        code, OxygenInWater.NeedOf(entry)!.Word.Span,
        ("need", oxygen.Need), ("limit", Show(oxygen.Limit.Value, Rounding.Upward)), ("source", oxygen.Limit.Source),
        ("attainable", Show(oxygen.Attainable, Rounding.Downward)),
        ("temperature", QuantityFormat.Computed(
            Range<Temperature>.Exactly(oxygen.Temperature), UnitSystem.Metric, Rounding.Nearest).Text),
        ("altitude", QuantityFormat.Computed(
            Range<Altitude>.Exactly(collection.Store.Altitude), UnitSystem.Metric, Rounding.Nearest).Text))
        .At($"care.{OxygenInWater.Field}");

    /// <summary>Away from the other, so that two figures that differ never look the same.</summary>
    private static string Show(Concentration concentration, Rounding rounding) => QuantityFormat.Computed(
        Range<Concentration>.Exactly(concentration), UnitSystem.Metric, rounding).Text;
}
