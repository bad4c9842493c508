using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>
/// How much oxygen fresh water takes from the air, which is all that stirring and airing can bring.
/// </summary>
/// <remarks>
/// Benson and Krause 1980, Limnol. Oceanogr. 25:662–671, and 1984, 29:620–632 (eq. 24 for pressure), as
/// APHA Standard Methods 4500-O and the USGS use them; 0–40 °C and 0.5–1.1 atm, no salt: salty water
/// holds less. Vapour pressure and θ as in the 1984 paper, from memory.
/// </remarks>
public static class OxygenSaturation
{
    public const string Formula = "Benson and Krause 1984";

    public static readonly Range<Temperature> Temperatures =
        Range<Temperature>.Between(Temperature.FromCelsius(0), Temperature.FromCelsius(40));

    public static readonly Range<Pressure> Pressures =
        Range<Pressure>.Between(Pressure.FromAtmospheres(0.5), Pressure.FromAtmospheres(1.1));

    /// <summary>Up to where the air is as thin as the formula reaches; no land lies too deep for it.</summary>
    public static readonly Range<Altitude> Altitudes =
        Range<Altitude>.AtMost(StandardAtmosphere.HeightOf(Pressures.Min!.Value));

    /// <summary>Of 1, 1 ÷ T, 1 ÷ T², 1 ÷ T³ and 1 ÷ T⁴.</summary>
    internal static readonly double[] Saturation =
        [-139.34411, 1.575701e5, -6.642308e7, 1.243800e10, -8.621949e11];

    /// <summary>Of 1, 1 ÷ T and 1 ÷ T².</summary>
    internal static readonly double[] Vapour = [11.8571, -3840.70, -216961];

    /// <summary>Of 1, t and t², t in °C.</summary>
    internal static readonly double[] Theta = [0.000975, -1.426e-5, 6.436e-8];

    /// <summary>At one standard atmosphere.</summary>
    public static SumResult<Concentration> At(Temperature temperature) =>
        At(temperature, Pressure.FromAtmospheres(1));

    public static SumResult<Concentration> At(Temperature temperature, Pressure air) =>
        (Refusal.Outside(Temperatures, temperature, Formula) ??
         Refusal.Outside(Pressures, air, Formula)) is { } refusal
            ? refusal
            : Concentration.FromMilligramsPerLitre(
                Standard(temperature) * Under(air.InAtmospheres, temperature));

    /// <summary>At a height, which a refusal then names instead of a pressure that nobody gave.</summary>
    public static SumResult<Concentration> At(Temperature temperature, Altitude altitude) =>
        (Refusal.Outside(Temperatures, temperature, Formula) ??
         Refusal.Outside(Altitudes, altitude, Formula)) is { } refusal
            ? refusal
            : At(temperature, StandardAtmosphere.At(altitude));

    private static double Standard(Temperature temperature) =>
        Math.Exp(Series(Saturation, 1 / (temperature.InCelsius + UnionisedAmmonia.Kelvins)));

    private static double Under(double air, Temperature temperature)
    {
        var vapour = Math.Exp(Series(Vapour, 1 / (temperature.InCelsius + UnionisedAmmonia.Kelvins)));
        var theta = Series(Theta, temperature.InCelsius);
        return air * (1 - (vapour / air)) * (1 - (theta * air)) / ((1 - vapour) * (1 - theta));
    }

    private static double Series(double[] of, double x)
    {
        var sum = 0.0;
        for (var i = of.Length - 1; i >= 0; i--)
            sum = (sum * x) + of[i];
        return sum;
    }
}
