using CareSheets.Quantities;

namespace CareSheets.Tankmates.Tanks;

/// <summary>
/// Space for ornamental fish by the Swiss Animal Protection Ordinance (SR 455.1), Annex 2, Table 8,
/// in the version that measures from the snout to the base of the tail fin: litres for each cm of
/// each fish by its length, and a tank of three by two by one lengths of the longest. It is shown
/// as what it is; whether it binds anybody, and in which version, the authority knows.
/// </summary>
public static class SwissSpace
{
    private static readonly (double UpTo, double LitresPerCentimetre)[] Classes =
        [(5, 0.5), (10, 0.75), (15, 1), (20, 1.25), (30, 1.75), (40, 2.25), (double.PositiveInfinity, 3)];

    public static readonly (double Length, double Width, double Height) Sides = (3, 2, 1);

    /// <summary>For one fish of this length in cm.</summary>
    public static double Litres(double length) =>
        length * Array.Find(Classes, c => length <= c.UpTo).LitresPerCentimetre;

    /// <summary>For a species' smallest group, to the mL, so that scripts add up the same figures.</summary>
    public static double Litres(Tankmate mate) => Math.Round(mate.Group * Litres(LengthOf(mate)), 3);

    /// <summary>
    /// A length that is stated with the tail is taken as it is: that asks for more room, never
    /// for less.
    /// </summary>
    public static double LengthOf(Tankmate mate) => mate.Body.Length.High;

    /// <summary>Whether that length is longer than the table's, because it holds the tail.</summary>
    public static bool IsMeasuredOtherwise(Tankmate mate) => mate.Body.Basis != LengthBasis.Standard;
}
