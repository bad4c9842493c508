namespace CareSheets.Tankmates;

/// <summary>How wide a fish opens its mouth, from narrow to wide.</summary>
public enum Mouth
{
    Tiny,
    Small,
    Medium,
    Large,
}
