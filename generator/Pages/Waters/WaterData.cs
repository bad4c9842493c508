using CareSheets.Quantities;
using CareSheets.Water;
using CareSheets.Water.Bags;

namespace CareSheets.Pages.Waters;

/// <summary>
/// What the scripts of the water page compute with: constants, units, limits and words. They live once, in the
/// program; the scripts hold only the form of the formulas.
/// </summary>
public static class WaterData
{
    public static DataFile Make(Site site)
    {
        var limits = site.Collection.Store.WaterLimits;
        return new DataFile(Routes.WaterData, "caresheetsWaterData", new
        {
            words = site.Words.Group("water").ToDictionary(w => w.Name, w => w.Text),
            units = Units(),
            possible = DimensionCatalogue.All.ToDictionary(d => d.Key, Possible),
            constants = Constants(),
            ranges = Ranges(),
            limits = Limits(limits),
            schemes = HardnessScheme.All.Select(s => new
            {
                key = s.Key,
                source = s.Source,
                classes = s.Classes.Select(c => new { word = c.Word, below = c.Below?.Canonical }),
            }),
        });
    }

    private static double?[] Possible(Dimension dimension) =>
    [
        dimension.Minimum,
        WaterExtremes.MostOf(dimension) ?? (dimension.Maximum == double.MaxValue ? null : dimension.Maximum),
    ];

    private static Dictionary<string, object> Units() => DimensionCatalogue.All.ToDictionary(
        d => d.Key,
        d => (object)d.Units.Select(u => new
        {
            key = u.Key,
            symbol = u.Symbol,
            zero = u.Zero,
            times = u.Times,
            over = u.Over,
            shown = u == d.For(UnitSystem.Metric),
        }));

    private static object Constants() => new
    {
        ammonia = new[] { UnionisedAmmonia.Offset, UnionisedAmmonia.Slope },
        kelvins = UnionisedAmmonia.Kelvins,
        first = CarbonateConstants.First,
        second = CarbonateConstants.Second,
        gas = CarbonateConstants.Gas,
        water = CarbonateConstants.Water,
        milligramsPerEquivalent = CarbonateWater.MilligramsPerEquivalent,
        milligramsOfGas = CarbonateWater.MilligramsOfGas,
        inAir = CarbonateWater.InAir,
        halvings = CarbonateWater.Halvings,
        saturation = OxygenSaturation.Saturation,
        vapour = OxygenSaturation.Vapour,
        theta = OxygenSaturation.Theta,
        lapse = StandardAtmosphere.Lapse,
        power = StandardAtmosphere.Power,
        volumes = BagScenarios.Volumes,
        steps = Assumed.Steps,
        assumedAlkalinity = Ends(Assumed.Alkalinity),
        assumedPH = Ends(Assumed.BagPH),
        changes = WaterChange.Most,
        noise = BagCheck.Noise,
        harmfulGas = MeasuredGas.Harmful.InMilligramsPerLitre,
    };

    private static object Ranges() => new
    {
        ammonia = Ends(UnionisedAmmonia.Temperatures),
        carbonate = Ends(CarbonateConstants.Temperatures),
        oxygen = Ends(OxygenSaturation.Temperatures),
        pressure = Ends(OxygenSaturation.Pressures),
        altitude = Ends(OxygenSaturation.Altitudes),
        gasAlkalinity = Ends(MeasuredGas.Alkalinities),
        gasPH = Ends(MeasuredGas.Acidities),
        criteriaPH = Ends(AmmoniaCriteria.Acidities),
        criteria = Ends(AmmoniaCriteria.Temperatures),
    };

    private static object Limits(WaterLimits limits) => new
    {
        goal = Limit(limits.UnionisedAmmonia),
        harm = Limit(limits.HarmfulAmmonia),
        transit = Limit(limits.ShortTransit),
        rise = Limit(limits.MixingRise),
        step = Limit(limits.AcidityStep),
        warmth = Limit(limits.TemperatureStep),
        afloat = Limit(limits.FloatTime),
        oxygen = WaterLimits.OxygenNeeds.Select(need =>
            new { need, limit = limits.OxygenFor(need)!.Value.Canonical, source = limits.OxygenFor(need)!.Source }),
    };

    private static object Limit<T>(WaterLimit<T> limit)
        where T : struct, IQuantity<T> => new { value = limit.Value.Canonical, source = limit.Source };

    /// <summary>An open end is none.</summary>
    private static double?[] Ends<T>(Range<T> range)
        where T : struct, IQuantity<T> => [range.Min?.Canonical, range.Max?.Canonical];
}
