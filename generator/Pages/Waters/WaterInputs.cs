using CareSheets.Pages.Mates;
using CareSheets.Quantities;

namespace CareSheets.Pages.Waters;

/// <summary>The fields of each sum on the water page, with the units a customer may choose.</summary>
internal sealed class WaterInputs(Site site)
{
    private static readonly Dictionary<string, IReadOnlyList<(string Field, Dimension? Of)>> Sums = new()
    {
        ["hardness"] = [("given", DimensionCatalogue.GeneralHardness)],
        ["blend"] =
        [
            ("one", DimensionCatalogue.GeneralHardness), ("other", DimensionCatalogue.GeneralHardness),
            ("target", DimensionCatalogue.GeneralHardness), ("volume", DimensionCatalogue.Volume),
        ],
        ["change"] =
        [
            ("tank", DimensionCatalogue.Concentration), ("fresh", DimensionCatalogue.Concentration),
            ("replaced", DimensionCatalogue.Share), ("times", null),
        ],
        ["ammonia"] =
        [
            ("ph", DimensionCatalogue.Acidity), ("temperature", DimensionCatalogue.Temperature),
            ("total", DimensionCatalogue.Ammonia),
        ],
        ["oxygen"] =
            [("temperature", DimensionCatalogue.Temperature), ("altitude", DimensionCatalogue.Altitude)],
        ["gas"] =
        [
            ("kh", DimensionCatalogue.CarbonateHardness), ("ph", DimensionCatalogue.Acidity),
            ("temperature", DimensionCatalogue.Temperature),
        ],
        ["bag"] =
        [
            ("temperature", DimensionCatalogue.Temperature), ("ph", DimensionCatalogue.Acidity),
            ("ammonia", DimensionCatalogue.Ammonia), ("kh", DimensionCatalogue.CarbonateHardness),
            ("hours", DimensionCatalogue.Elapsed), ("tank_temperature", DimensionCatalogue.Temperature),
            ("tank_ph", DimensionCatalogue.Acidity), ("tank_kh", DimensionCatalogue.CarbonateHardness),
        ],
    };

    public static IEnumerable<string> Names => Sums.Keys;

    public IReadOnlyList<WaterInput> Of(string sum) =>
        [.. Sums[sum].Select(f => Input($"{sum}-{f.Field.Replace('_', '-')}", $"water_page.{sum}_{f.Field}", f.Of))];

    private WaterInput Input(string id, string key, Dimension? of)
    {
        var label = site.Words[key];
        var units = of is null ? [] : Units(of);
        var called = site.Words.Say("mates.unit_of", ("field", label));
        return new WaterInput(
            id, label, of?.Key ?? "", units.Count == 0 ? null : new UnitSelect($"{id}-unit", called, units));
    }

    /// <summary>All units of what is measured in many, else those of the two systems; the shop's own first.</summary>
    private IReadOnlyList<UnitChoice> Units(Dimension of)
    {
        var first = of.For(site.Collection.Store.Units);
        var many = of == DimensionCatalogue.GeneralHardness || of == DimensionCatalogue.CarbonateHardness ||
            of == DimensionCatalogue.Ammonia || of == DimensionCatalogue.Volume;
        var all = many ? of.Units : [of.For(UnitSystem.Metric), of.For(UnitSystem.US)];
        return [.. all.Prepend(first).Distinct().Where(u => u.Symbol.Length > 0)
            .Select(u => new UnitChoice(u.Key, u.Symbol))];
    }
}
