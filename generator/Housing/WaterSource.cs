using CareSheets.Quantities;
using CareSheets.Species;
using CareSheets.Water.Bags;

namespace CareSheets.Housing;

/// <summary>Which of the shop's waters one is.</summary>
public enum WaterSourceKind
{
    System,
    Tap,

    /// <summary>From reverse osmosis or a still: nothing dissolved in it, to blend with.</summary>
    Pure,
}

/// <summary>A water that the shop has, with the figures known of it; pure water has none.</summary>
public sealed record WaterSource(WaterSourceKind Kind, StoreWater Water)
{
    public static readonly WaterSource Pure =
        new(WaterSourceKind.Pure, new StoreWater("", new Dictionary<string, StatedRange>()));

    /// <summary>As the receiving water of a bag; what the shop states as a range or not at all is unknown.</summary>
    public ReceivingWater AsReceiving() => new(Water.Name)
    {
        Temperature = Figure<Temperature>(),
        PH = Figure<Acidity>(),
        Alkalinity = Figure<CarbonateHardness>(),
    };

    /// <summary>The systems in the shop's order, then the tap where it is known.</summary>
    public static IEnumerable<WaterSource> Of(Store store)
    {
        foreach (var system in store.Systems)
            yield return new WaterSource(WaterSourceKind.System, system);
        if (store.Tap is { } tap)
            yield return new WaterSource(WaterSourceKind.Tap, tap);
    }

    private T? Figure<T>()
        where T : struct, IQuantity<T> =>
        Water.Figures.Values.FirstOrDefault(f => f.Dimension == T.Dimension) is { IsSingle: true } stated
            ? stated.As<T>().Max : null;
}
