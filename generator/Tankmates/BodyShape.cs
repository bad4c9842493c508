namespace CareSheets.Tankmates;

/// <summary>Build of a body, which decides how deep it is for its length.</summary>
public enum BodyShape
{
    EelLike,
    Elongated,
    Fusiform,
    Deep,

    /// <summary>About as deep as long, as angelfishes are.</summary>
    Disc,
    Flattened,
}
