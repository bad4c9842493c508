namespace CareSheets.Tankmates;

/// <summary>Where in the tank a species lives; several may hold.</summary>
[Flags]
public enum Levels
{
    /// <summary>The entry names no level: unknown, never "nowhere".</summary>
    None = 0,
    Top = 1,
    Middle = 2,
    Bottom = 4,
}
