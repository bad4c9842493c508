using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>
/// How carbonic acid splits in pure water of one temperature, and how much of its gas dissolves.
/// </summary>
/// <remarks>
/// log₁₀ K = a + b·T + c ÷ T + d·log₁₀ T + e ÷ T², T in kelvins. K₁, K₂ and K_H: Plummer and Busenberg
/// 1982, Geochim. Cosmochim. Acta 46:1011–1040, for 0–90 °C; K_w: Nordstrom et al. 1990, in the same
/// form. All for water that is nearly pure. Two misprints are about, a leading −107.881 in K₂ and
/// −0.060919964 in K₁; tests guard against both.
/// </remarks>
public sealed record CarbonateConstants
{
    public const string Formula = "Plummer and Busenberg 1982";

    public static readonly Range<Temperature> Temperatures =
        Range<Temperature>.Between(Temperature.FromCelsius(0), Temperature.FromCelsius(90));

    internal static readonly double[] First =
        [-356.3094, -0.06091964, 21834.37, 126.8339, -1684915];

    internal static readonly double[] Second =
        [-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9];

    internal static readonly double[] Gas = [108.3865, 0.01985076, -6919.53, -40.45154, 669365];

    internal static readonly double[] Water =
        [-283.9710, -0.05069842, 13323.00, 102.24447, -1119669];

    private CarbonateConstants(double kelvins)
    {
        (K1, K2) = (Power(First, kelvins), Power(Second, kelvins));
        (KH, KW) = (Power(Gas, kelvins), Power(Water, kelvins));
    }

    /// <summary>CO₂ to bicarbonate, mol/L.</summary>
    public double K1 { get; }

    /// <summary>Bicarbonate to carbonate, mol/L.</summary>
    public double K2 { get; }

    /// <summary>Dissolved CO₂ for each atmosphere of it above the water, mol/L.</summary>
    public double KH { get; }

    /// <summary>Of water itself, (mol/L)².</summary>
    public double KW { get; }

    public static SumResult<CarbonateConstants> At(Temperature temperature) =>
        Refusal.Outside(Temperatures, temperature, Formula) is { } refusal
            ? refusal
            : new CarbonateConstants(temperature.InCelsius + UnionisedAmmonia.Kelvins);

    private static double Power(double[] of, double kelvins) => Math.Pow(
        10,
        of[0] + (of[1] * kelvins) + (of[2] / kelvins) + (of[3] * Math.Log10(kelvins)) +
        (of[4] / (kelvins * kelvins)));
}
