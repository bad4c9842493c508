namespace CareSheets.Tankmates;

/// <summary>How much oxygen a species needs, in growing order.</summary>
public enum Oxygen
{
    Ordinary,
    High,
    VeryHigh,
}
