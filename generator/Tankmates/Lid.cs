namespace CareSheets.Tankmates;

/// <summary>What a tank needs against jumpers; tight means no gap that the fish fits through.</summary>
public enum Lid
{
    No,
    Yes,
    Tight,
}
