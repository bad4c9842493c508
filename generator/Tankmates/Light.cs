namespace CareSheets.Tankmates;

/// <summary>How bright a species likes it, from dark upward.</summary>
public enum Light
{
    Dim,
    Medium,
    Bright,
}
