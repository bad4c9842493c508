namespace CareSheets.Telling;

/// <summary>The company that a species is held against.</summary>
public enum Circle
{
    /// <summary>The other entries of its genus.</summary>
    Genus,

    /// <summary>The other entries of its family.</summary>
    Family,

    /// <summary>The other species of the same arrival.</summary>
    Arrival,
}
