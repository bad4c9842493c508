namespace CareSheets.Tankmates;

/// <summary>Which other species a fish bears beside it, by the writer's word.</summary>
public enum Neighbours
{
    Any,

    /// <summary>Fishes of about its own size, for it starves or hides beside larger ones.</summary>
    OfItsSize,

    /// <summary>Only its own kind.</summary>
    None,
}
