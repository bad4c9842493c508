namespace CareSheets.Quantities;

/// <summary>Whose everyday units a reader wants to see.</summary>
public enum UnitSystem
{
    Both,
    Metric,
    US,
}
