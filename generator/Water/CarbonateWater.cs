using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>
/// A fresh water by what decides its pH: its alkalinity and all its carbon, as CO₂, bicarbonate and
/// carbonate. Both are kept in mixing, and pH follows from them; it is never averaged.
/// </summary>
/// <remarks>
/// Alkalinity = [HCO₃⁻] + 2[CO₃²⁻] + [OH⁻] − [H⁺], nearly pure water (no activities). Other weak acids,
/// such as the humic ones of peat, are not counted.
/// </remarks>
public sealed record CarbonateWater
{
    /// <summary>mg/L CaCO₃ for each mole of charge in a litre: half of 100.0869 g/mol.</summary>
    internal const double MilligramsPerEquivalent = 50043.45;

    /// <summary>Molar mass of CO₂ in mg/mol.</summary>
    internal const double MilligramsOfGas = 44009.5;

    /// <summary>CO₂ in the air, in parts of one; outdoors it was about this in 2015 (from memory).</summary>
    internal const double InAir = 400e-6;

    /// <summary>Bisections of 0 to 14, to the last digit that a double has.</summary>
    internal const int Halvings = 56;

    private CarbonateWater(CarbonateConstants of, Temperature temperature, double alkalinity, double hydrogen)
    {
        (Temperature, Equivalents) = (temperature, alkalinity);
        PH = Acidity.FromPH(Math.Clamp(-Math.Log10(hydrogen), 0, 14));
        var bicarbonate = Math.Max(0, Bicarbonate(of, alkalinity, hydrogen));
        var gas = bicarbonate * hydrogen / of.K1;
        TotalCarbon = gas + bicarbonate + (bicarbonate * of.K2 / hydrogen);
        CarbonDioxide = Concentration.FromMilligramsPerLitre(gas * MilligramsOfGas);
    }

    public Temperature Temperature { get; }

    public Acidity PH { get; }

    public Concentration CarbonDioxide { get; }

    public CarbonateHardness Alkalinity =>
        CarbonateHardness.FromMilligramsPerLitre(Math.Max(0, Equivalents) * MilligramsPerEquivalent);

    /// <summary>mol/L.</summary>
    internal double Equivalents { get; }

    /// <summary>mol/L.</summary>
    internal double TotalCarbon { get; }

    /// <summary>A water whose pH and alkalinity have been measured.</summary>
    public static SumResult<CarbonateWater> Of(
        CarbonateHardness alkalinity, Acidity acidity, Temperature temperature) =>
        CarbonateConstants.At(temperature).Then<CarbonateWater>(of =>
        {
            var (charge, hydrogen) = (Charge(alkalinity), Math.Pow(10, -acidity.InPH));
            var least = ((of.KW / hydrogen) - hydrogen) * MilligramsPerEquivalent;
            return alkalinity.InMilligramsPerLitre < least
                ? new Refusal(
                    RefusalReason.NoSuchWater, DimensionCatalogue.CarbonateHardness,
                    alkalinity.InMilligramsPerLitre, least, null, CarbonateConstants.Formula)
                : new CarbonateWater(of, temperature, charge, hydrogen);
        });

    /// <summary>The same alkalinity with another amount of CO₂, as after some has left.</summary>
    public static SumResult<CarbonateWater> WithGas(
        CarbonateHardness alkalinity, Concentration gas, Temperature temperature) =>
        CarbonateConstants.At(temperature).Then<CarbonateWater>(of =>
            Holding(of, Charge(alkalinity), gas.InMilligramsPerLitre / MilligramsOfGas, temperature));

    /// <summary>
    /// When no more CO₂ leaves into air that holds 400 parts per million of it: the highest pH that
    /// airing can bring. Rooms hold more and tanks stay below.
    /// </summary>
    public static SumResult<CarbonateWater> Aired(
        CarbonateHardness alkalinity, Temperature temperature, Pressure? air = null) =>
        CarbonateConstants.At(temperature).Then<CarbonateWater>(of => Holding(
            of, Charge(alkalinity), InAir * (air?.InAtmospheres ?? 1) * of.KH, temperature));

    /// <summary>Parts of two waters in a closed vessel, by volume; any share of each, not both none.</summary>
    public static SumResult<CarbonateWater> Mix(
        CarbonateWater one, double volumesOfOne, CarbonateWater other, double volumesOfOther)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        var all = volumesOfOne + volumesOfOther;
        if (!(all > 0) || volumesOfOne < 0 || volumesOfOther < 0 || !double.IsFinite(all))
            return new Refusal(RefusalReason.NothingHappens, DimensionCatalogue.Volume, all, 0, null);
        double Of(double mine, double theirs) => ((mine * volumesOfOne) + (theirs * volumesOfOther)) / all;
        var temperature = Temperature.FromCelsius(Of(one.Temperature.InCelsius, other.Temperature.InCelsius));
        return FromCarbon(
            Of(one.Equivalents, other.Equivalents), Of(one.TotalCarbon, other.TotalCarbon), temperature);
    }

    /// <summary>From what mixing keeps, both in mol/L.</summary>
    internal static SumResult<CarbonateWater> FromCarbon(
        double alkalinity, double carbon, Temperature temperature) =>
        CarbonateConstants.At(temperature).Then<CarbonateWater>(of => new CarbonateWater(
            of, temperature, alkalinity, Solve(alkalinity, h => Balance(of, carbon, h))));

    private static CarbonateWater Holding(
        CarbonateConstants of, double alkalinity, double gas, Temperature temperature) => new(
        of, temperature, alkalinity, Solve(alkalinity, h =>
            (gas * of.K1 / h * (1 + (2 * of.K2 / h))) + (of.KW / h) - h));

    /// <summary>Alkalinity that so much carbon has at a concentration of hydrogen ions.</summary>
    private static double Balance(CarbonateConstants of, double carbon, double h) =>
        (carbon * ((of.K1 * h) + (2 * of.K1 * of.K2)) / ((h * h) + (of.K1 * h) + (of.K1 * of.K2))) +
        (of.KW / h) - h;

    private static double Bicarbonate(CarbonateConstants of, double alkalinity, double h) =>
        (alkalinity - (of.KW / h) + h) / (1 + (2 * of.K2 / h));

    /// <summary>The hydrogen ions at which a water has this alkalinity, which rises with pH.</summary>
    private static double Solve(double alkalinity, Func<double, double> alkalinityAt)
    {
        var (low, high) = (0.0, 14.0);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            if (alkalinityAt(Math.Pow(10, -middle)) < alkalinity)
                low = middle;
            else
                high = middle;
        }
        return Math.Pow(10, -((low + high) / 2));
    }

    private static double Charge(CarbonateHardness alkalinity) =>
        alkalinity.InMilligramsPerLitre / MilligramsPerEquivalent;
}
