namespace CareSheets.Species;

/// <summary>What a range of the water says. Kinds are never merged into one another.</summary>
public enum RangeKind
{
    /// <summary>For long-term keeping: the figure customers are told.</summary>
    Keep,

    /// <summary>Where the species does best; lies within <see cref="Keep"/>.</summary>
    Prefers,

    /// <summary>Measured where it lives; may go beyond <see cref="Keep"/>.</summary>
    Wild,

    /// <summary>Borne for a time; <see cref="Keep"/> lies within it.</summary>
    Survives,

    /// <summary>For spawning; lies within <see cref="Survives"/>.</summary>
    Breeding,
}
