namespace CareSheets.Species;

/// <summary>How many of its own kind a species is kept with, told apart as a keeper has to.</summary>
public enum GroupKind
{
    /// <summary>So many of its kind, or more.</summary>
    Several,

    /// <summary>In company by nature, and well on its own too.</summary>
    Free,

    /// <summary>By itself.</summary>
    Alone,

    /// <summary>By itself, for it may injure or kill another of its kind.</summary>
    Only,
}
