using System.Globalization;
using CareSheets.Quantities;
using CareSheets.Water;

namespace CareSheets.Pages.Waters;

/// <summary>Tables for those who read the water page without scripts, or on paper.</summary>
internal sealed class WaterTables(Site site)
{
    private static readonly double[] Celsius = [18, 20, 22, 24, 26, 28, 30];
    private static readonly double[] Acidities = [6, 6.5, 7, 7.5, 8, 8.5, 9];
    private static readonly double[] Metres = [0, 300, 600, 900, 1200, 1500, 1800];
    private static readonly double[] Degrees = [1, 2, 3, 4, 6, 8, 10, 12, 16, 20, 25];

    private Words Words => site.Words;

    public IReadOnlyList<RecordTable> Of(string sum) => sum switch
    {
        "hardness" => [Hardness()],
        "ammonia" => [Ammonia()],
        "oxygen" => [Oxygen()],
        "gas" => [Gas()],
        _ => [],
    };

    private RecordTable Hardness()
    {
        Unit[] units =
        [
            .. GeneralHardness.Dimension.Units.Where(u => u.Key is not ("partPerMillion" or "germanDegree")),
        ];
        return Table("hardness", [Words["water_page.table_hardness_first"], .. units.Select(u => u.Symbol)], Degrees
            .Select(degrees => Row(degrees, [.. units.Select(u =>
                Digits.Of(u.FromCanonical(GeneralHardness.FromGermanDegrees(degrees).Canonical)))])));
    }

    private RecordTable Ammonia() => Grid("ammonia", Acidities, (pH, celsius) =>
        UnionisedAmmonia.ShareAt(Acidity.FromPH(pH), Temperature.FromCelsius(celsius)).Value.InPercent);

    private RecordTable Oxygen() => Grid("oxygen", Metres, (metres, celsius) => OxygenSaturation
        .At(Temperature.FromCelsius(celsius), StandardAtmosphere.At(Altitude.FromMetres(metres)))
        .Value.InMilligramsPerLitre);

    /// <summary>At 25 °C, for the degree changes it least.</summary>
    private RecordTable Gas() => Table(
        "gas", [Words["water_page.table_gas_first"], .. Acidities.Take(5).Select(Number)],
        new[] { 1.0, 2, 4, 6, 8, 12, 16 }.Select(degrees => Row(degrees, [.. Acidities.Take(5).Select(pH =>
            Digits.Of(CarbonateWater.Of(
                CarbonateHardness.FromGermanDegrees(degrees), Acidity.FromPH(pH), Temperature.FromCelsius(25))
                .Value.CarbonDioxide.InMilligramsPerLitre))])));

    private RecordTable Grid(string key, double[] columns, Func<double, double, double> figure) => Table(
        key, [Words[$"water_page.table_{key}_first"], .. columns.Select(Number)],
        Celsius.Select(celsius => new RecordRow(
            Warmth(celsius), [.. columns.Select(column => Digits.Of(figure(column, celsius)))])));

    private RecordTable Table(string key, IReadOnlyList<string> titles, IEnumerable<RecordRow> rows) => new(
        $"table-{key}", Words[$"water_page.table_{key}"], Words[$"water_page.table_{key}_lead"], titles, [.. rows]);

    private static RecordRow Row(double first, IReadOnlyList<string> figures) => new(Number(first), figures);

    /// <summary>In both scales, as everywhere on the site.</summary>
    private string Warmth(double celsius) => site.Quantities.Computed(
        DimensionCatalogue.Temperature, celsius, celsius, Rounding.Nearest, site.Collection.Store.Units).Both;

    private static string Number(double figure) => figure.ToString(CultureInfo.InvariantCulture);
}
