namespace CareSheets.Tankmates;

/// <summary>Build of a body, which decides how deep it is for its length.</summary>
public enum BodyShape
{
    EelLike,
    Elongated,
    Fusiform,
    Deep,
    Flattened,
}
