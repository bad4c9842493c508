namespace CareSheets.Tankmates;

/// <summary>Why two species do not simply suit each other. The theme has a sentence for each.</summary>
public enum ReasonKind
{
    /// <summary>No value of a water figure lies in both keep ranges.</summary>
    WaterApart,

    /// <summary>The keep ranges share so little that the tank has no room to vary.</summary>
    WaterNarrow,

    /// <summary>The keep ranges overlap well, but what both prefer does not.</summary>
    BestApart,

    /// <summary>A figure or word that a rule asks for is not in the entry of One.</summary>
    UnknownOfOne,
    UnknownOfOther,
    UnknownOfBoth,

    /// <summary>A figure is unknown, and relatives place it where the other's is not.</summary>
    RelativesApart,

    /// <summary>A figure is unknown; relatives place it so that both have something in common.</summary>
    RelativesOnly,

    /// <summary>One eats fish, and Other fits its mouth and reach.</summary>
    WouldSwallow,

    /// <summary>One eats fish, and Other is short beside it, if too deep to go down whole.</summary>
    WouldHunt,

    /// <summary>One eats fish, and Other is but little too long and too deep.</summary>
    MightSwallow,

    /// <summary>One eats fish, and Other would pass its mouth but is but little too long.</summary>
    MightSwallowLonger,

    /// <summary>One eats fish, and Other is short enough but too deep.</summary>
    MightSwallowDeeper,

    /// <summary>One does not hunt fish, but Other would fit its mouth.</summary>
    MightTake,

    MuchLarger,
    Fierce,
    Feisty,
    DefendsPlace,

    /// <summary>Both defend a place on the same level.</summary>
    RivalsForPlace,

    /// <summary>Relatives are treated like its own kind.</summary>
    TreatsKinAsOwn,

    MayCross,
    NipsFins,

    /// <summary>One nips fins, and nobody knows how long those of Other are.</summary>
    MayNipFins,
    NipsTrailingFins,

    /// <summary>The entry of One names Other, or a group that it belongs to, as one to be kept apart from.</summary>
    NotWith,

    /// <summary>Other is more than twice as long as One, which does best beside fishes of its size.</summary>
    WantsItsSize,
    WantsItsOwnKind,
    FlowApart,
    FlowDiffers,
    LightDiffers,
    BottomDiffers,
    EatsPlantsNeeded,
}
