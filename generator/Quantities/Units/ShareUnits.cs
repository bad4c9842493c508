namespace CareSheets.Quantities.Units;

/// <summary>The unit for a part of a whole.</summary>
internal static class ShareUnits
{
    public static readonly Unit Percent =
        new("percent", "%", UnitSystem.Both, ["%", "percent", "per cent"]) { Step = 1 };

    public static readonly Dimension OfAWhole =
        new("share", [Percent], Percent, Percent) { Maximum = 100, Example = "25 %" };
}
