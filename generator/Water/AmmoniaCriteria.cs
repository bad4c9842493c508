using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>
/// The total ammonia, as nitrogen, that US authorities hold wild fresh waters to: a measure to
/// compare with, written for rivers and lakes, not for tanks.
/// </summary>
/// <remarks>
/// US EPA 2013, Aquatic Life Ambient Water Quality Criteria for Ammonia, EPA 822-R-13-001. Formulas
/// from memory; they give the published pair 17 and 1.9 mg/L at pH 7 and 20 °C. The criteria's tables
/// go from pH 6.5 to 9 and from 0 to 30 °C (from memory), and nothing is said beyond.
/// </remarks>
public static class AmmoniaCriteria
{
    public const string Formula = "US EPA 2013";

    public static readonly Range<Acidity> Acidities =
        Range<Acidity>.Between(Acidity.FromPH(6.5), Acidity.FromPH(9));

    public static readonly Range<Temperature> Temperatures =
        Range<Temperature>.Between(Temperature.FromCelsius(0), Temperature.FromCelsius(30));

    /// <summary>For one hour, not more than once in three years.</summary>
    /// <param name="acidity">Of the water.</param>
    /// <param name="temperature">Of the water.</param>
    /// <param name="withSalmonids">Whether trout and their kin live there.</param>
    public static SumResult<Ammonia> Acute(
        Acidity acidity, Temperature temperature, bool withSalmonids = false) =>
        Within(acidity, temperature, (pH, celsius) => withSalmonids
            ? Math.Min(Salmonids(pH), OfAcidity(pH) * Warmth(celsius))
            : OfAcidity(pH) * Math.Min(51.93, Warmth(celsius)));

    /// <summary>Mean of thirty days.</summary>
    public static SumResult<Ammonia> Chronic(Acidity acidity, Temperature temperature) =>
        Within(acidity, temperature, (pH, celsius) =>
            0.8876 * Between(pH, 7.688, 0.0278, 1.1994) *
            2.126 * Math.Pow(10, 0.028 * (20 - Math.Max(celsius, 7))));

    private static SumResult<Ammonia> Within(
        Acidity acidity, Temperature temperature, Func<double, double, double> criterion) =>
        (Refusal.Outside(Acidities, acidity, Formula) ??
         Refusal.Outside(Temperatures, temperature, Formula)) is { } refusal
            ? refusal
            : Ammonia.FromMilligramsOfNitrogen(criterion(acidity.InPH, temperature.InCelsius));

    private static double OfAcidity(double pH) => 0.7249 * Between(pH, 7.204, 0.0114, 1.6181);

    private static double Warmth(double celsius) => 23.12 * Math.Pow(10, 0.036 * (20 - celsius));

    private static double Salmonids(double pH) => Between(pH, 7.204, 0.275, 39.0);

    /// <summary>A curve that falls from its acid to its alkaline end around a pH.</summary>
    private static double Between(double pH, double middle, double alkaline, double acid) =>
        (alkaline / (1 + Math.Pow(10, middle - pH))) + (acid / (1 + Math.Pow(10, pH - middle)));
}
