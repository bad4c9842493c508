using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>What follows from ions and from conductivity for all that is dissolved.</summary>
public static class Dissolved
{
    private const double CalciumCarbonate = 100.0869;
    private const double Calcium = 40.078;
    private const double Magnesium = 24.305;

    /// <summary>Hardness of a water report that tells its ions: each stands for one CaCO₃ (molar masses).</summary>
    public static GeneralHardness HardnessOf(Concentration calcium, Concentration magnesium) =>
        GeneralHardness.FromMilligramsPerLitre(CalciumCarbonate *
            ((calcium.InMilligramsPerLitre / Calcium) + (magnesium.InMilligramsPerLitre / Magnesium)));

    /// <summary>
    /// Dissolved solids: 0.55 to 0.75 mg/L for each µS/cm in most natural waters (Hem 1985, US Geological
    /// Survey Water-Supply Paper 2254, from memory); there is no exact rule.
    /// </summary>
    public static Range<Concentration> SolidsOf(Conductivity conductivity) =>
        Range<Concentration>.Between(Milligrams(0.55, conductivity), Milligrams(0.75, conductivity));

    private static Concentration Milligrams(double factor, Conductivity conductivity) =>
        Concentration.FromMilligramsPerLitre(factor * conductivity.InMicrosiemensPerCentimetre);
}
