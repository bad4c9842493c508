namespace CareSheets.Names.Matching;

/// <summary>Why a name was not taken without asking.</summary>
public enum Doubt
{
    None,

    /// <summary>Nothing like it is known.</summary>
    NothingLikeIt,

    /// <summary>The writer is not sure: cf., aff., sp. or a question mark.</summary>
    Qualified,

    Hybrid,

    /// <summary>More than one species fits equally.</summary>
    TwoTargets,

    /// <summary>The scientific name means one species, the name or code beside it another.</summary>
    Contradiction,

    /// <summary>A genus that exists, without an epithet.</summary>
    GenusAlone,

    /// <summary>The genus exists; a name that is valid is never corrected into another.</summary>
    GenusExists,

    /// <summary>Only like a known name.</summary>
    OnlyLike,
}
