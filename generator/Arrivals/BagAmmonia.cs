using System.Globalization;

namespace CareSheets.Arrivals;

/// <summary>
/// Total ammonia of a bag as a test kit gives it. Kits count it as nitrogen, as ammonia or as
/// ammonium; the same water reads up to 29 % higher on one than on another.
/// </summary>
/// <param name="MilligramsPerLitre">As read, 0 or more.</param>
public sealed record BagAmmonia(double MilligramsPerLitre, AmmoniaBasis Basis)
{
    // Molar masses in g/mol from the abridged standard atomic weights of IUPAC: N 14.007, H 1.008.
    private const double Nitrogen = 14.007;
    private const double Hydrogen = 1.008;

    /// <summary>As nitrogen, mg/L: what the published limits are stated in.</summary>
    public double AsNitrogen => MilligramsPerLitre * Basis switch
    {
        AmmoniaBasis.Nitrogen => 1,
        AmmoniaBasis.Ammonia => Nitrogen / (Nitrogen + 3 * Hydrogen),
        AmmoniaBasis.Ammonium => Nitrogen / (Nitrogen + 4 * Hydrogen),
    };

    /// <summary>Nothing when the text has not the form of <c>4 mg/L as N</c>.</summary>
    public static BagAmmonia? Parse(string text)
    {
        const string unit = " mg/L as ";
        var at = text.IndexOf(unit, StringComparison.Ordinal);
        if (at < 0 || !double.TryParse(
            text.AsSpan(0, at), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var read))
            return null;
        return text[(at + unit.Length)..] switch
        {
            "N" => new BagAmmonia(read, AmmoniaBasis.Nitrogen),
            "NH3" => new BagAmmonia(read, AmmoniaBasis.Ammonia),
            "NH4" => new BagAmmonia(read, AmmoniaBasis.Ammonium),
            _ => null,
        };
    }
}
