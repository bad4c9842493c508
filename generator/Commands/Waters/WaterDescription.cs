using CareSheets.Quantities;
using CareSheets.Water.Bags;

namespace CareSheets.Commands.Waters;

/// <summary>
/// A water as it is described on the command line: by the name of one of the shop's, or by its figures, as in
/// <c>"pH 7.9, 12 °dKH, 25 °C"</c>. What it does not say is none.
/// </summary>
internal static class WaterDescription
{
    internal const string Example = "\"pH 7.9, 12 °dKH, 25 °C\"";
    internal const string ByFigures = $"Describe it by its figures: {Example}.";

    /// <summary>A tank that receives fishes; water straight from the tap is refused.</summary>
    public static ReceivingWater? ReadTank(WaterDesk desk, string argument, string typed)
    {
        if (!ShopWaters.IsTap(typed.Trim()))
            return Read(desk, argument, typed, withTap: false);
        desk.Waters.RefuseTap(argument, typed);
        return null;
    }

    /// <summary>Nothing where it can't be read; then the desk's bag says why.</summary>
    public static ReceivingWater? Read(WaterDesk desk, string argument, string typed, bool withTap = true)
    {
        if (desk.Waters.Find(typed.Trim()) is { } known)
            return known.AsReceiving();
        if (!typed.Any(char.IsAsciiDigit))
        {
            desk.Waters.TellUnknown(typed, withTap);
            return null;
        }
        ReceivingWater? read = new("");
        foreach (var part in typed.Split(','))
            read = read is null ? null : With(read, desk, argument, part.Trim());
        return read;
    }

    /// <summary>What is neither a temperature nor a carbonate hardness is read as a pH, or refused as one.</summary>
    private static ReceivingWater? With(ReceivingWater water, WaterDesk desk, string argument, string part)
    {
        var of = WaterDesk.Common([part], DimensionCatalogue.Temperature, DimensionCatalogue.CarbonateHardness);
        if (of == DimensionCatalogue.Temperature)
            return desk.Read<Temperature>(argument, part) is { } warmth
                ? water with { Temperature = warmth.Value } : null;
        if (of == DimensionCatalogue.CarbonateHardness)
            return desk.Read<CarbonateHardness>(argument, part) is { } kh
                ? water with { Alkalinity = kh.Value } : null;
        return desk.Read<Acidity>(argument, part) is { } pH ? water with { PH = pH.Value } : null;
    }
}
