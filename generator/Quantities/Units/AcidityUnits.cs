namespace CareSheets.Quantities.Units;

/// <summary>
/// pH, a plain number on a logarithmic scale; the only figure written without a unit.
/// </summary>
internal static class AcidityUnits
{
    public static readonly Unit PH =
        new("pH", string.Empty, UnitSystem.Both, ["pH"]) { Step = 0.1 };

    /// <remarks>
    /// Water can leave 0–14 only as a concentrated acid or lye, in which nothing is kept,
    /// so a figure outside is taken for a slip.
    /// </remarks>
    public static readonly Dimension Place =
        new("acidity", [PH], PH, PH)
        { IsPoint = true, UnitOptional = true, Maximum = 14, Example = "6.5–7.5" };

    public static readonly Dimension Difference =
        new("acidityDifference", [PH], PH, PH)
        { UnitOptional = true, Minimum = -14, Maximum = 14, Example = "0.3" };
}
