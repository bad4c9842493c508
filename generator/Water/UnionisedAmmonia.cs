using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>
/// How much of the ammonia in fresh water is NH₃, which harms fishes far more than its ion NH₄⁺.
/// </summary>
/// <remarks>
/// Emerson, Russo, Lund and Thurston 1975, J. Fish. Res. Board Can. 32:2379–2383:
/// pKa = 0.09018 + 2729.92 ÷ T, share = 1 ÷ (10^(pKa − pH) + 1), for 0–50 °C and no salt. Their tables
/// go from pH 6 to 10; the law of mass action holds beyond. A constant 2727.92 is printed in places;
/// it misses the published tables by 1.5 % and a test guards against it.
/// </remarks>
public static class UnionisedAmmonia
{
    public const string Formula = "Emerson et al. 1975";

    internal const double Offset = 0.09018;
    internal const double Slope = 2729.92;
    internal const double Kelvins = 273.15;

    public static readonly Range<Temperature> Temperatures =
        Range<Temperature>.Between(Temperature.FromCelsius(0), Temperature.FromCelsius(50));

    public static SumResult<double> PKa(Temperature temperature) =>
        Refusal.Outside(Temperatures, temperature, Formula) is { } refusal
            ? refusal
            : Offset + (Slope / (temperature.InCelsius + Kelvins));

    /// <summary>The part that is NH₃; the same counted as nitrogen or as ammonia.</summary>
    public static SumResult<Share> ShareAt(Acidity acidity, Temperature temperature) =>
        PKa(temperature).Then<Share>(pKa =>
            Share.FromParts(1 / (Math.Pow(10, pKa - acidity.InPH) + 1)));

    public static SumResult<Ammonia> In(Ammonia total, Acidity acidity, Temperature temperature) =>
        ShareAt(acidity, temperature).Then<Ammonia>(share => total * share.InParts);

    /// <summary>The most ammonia, with its ion, of which no more than the limit is NH₃.</summary>
    public static SumResult<Ammonia> LargestTotal(
        Ammonia limit, Acidity acidity, Temperature temperature) =>
        ShareAt(acidity, temperature).Then<Ammonia>(share => limit / share.InParts);
}
