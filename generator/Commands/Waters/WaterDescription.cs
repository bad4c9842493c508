using CareSheets.Housing;
using CareSheets.Quantities;

namespace CareSheets.Commands.Waters;

/// <summary>
/// A water as it is described on the command line: by the name of one of the shop's, or by its figures, as in
/// <c>"pH 7.9, 12 °dKH, 25 °C"</c>. What it does not say is none.
/// </summary>
internal sealed record WaterDescription(
    string Name, Temperature? Temperature, Acidity? PH, CarbonateHardness? Alkalinity)
{
    /// <summary>Nothing where it can't be read; then the desk's bag says why.</summary>
    public static WaterDescription? Read(WaterDesk desk, string argument, string typed)
    {
        if (desk.FindWater(typed.Trim()) is { } known)
            return Of(known);
        if (!typed.Any(char.IsAsciiDigit))
        {
            desk.TellUnknownWater(typed);
            return null;
        }
        var read = new WaterDescription("", null, null, null);
        foreach (var part in typed.Split(','))
            read = read?.With(desk, argument, part.Trim());
        return read;
    }

    private static WaterDescription Of(WaterSource water)
    {
        T? Figure<T>(Dimension dimension)
            where T : struct, IQuantity<T> =>
            water.Water.Figures.Values.FirstOrDefault(f => f.Dimension == dimension) is { IsSingle: true } stated
                ? stated.As<T>().Max : null;
        return new WaterDescription(
            water.Kind == WaterSourceKind.Tap ? "tap" : water.Water.Name,
            Figure<Temperature>(DimensionCatalogue.Temperature), Figure<Acidity>(DimensionCatalogue.Acidity),
            Figure<CarbonateHardness>(DimensionCatalogue.CarbonateHardness));
    }

    private WaterDescription? With(WaterDesk desk, string argument, string part) =>
        WaterDesk.Common([part], DimensionCatalogue.Temperature, DimensionCatalogue.CarbonateHardness) is { } dimension
            ? dimension == DimensionCatalogue.Temperature
                ? desk.Read<Temperature>(argument, part) is { } warmth ? this with { Temperature = warmth.Value } : null
                : desk.Read<CarbonateHardness>(argument, part) is { } kh ? this with { Alkalinity = kh.Value } : null
            : desk.Read<Acidity>(argument, part) is { } pH ? this with { PH = pH.Value } : null;
}
