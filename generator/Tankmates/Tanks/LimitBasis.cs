namespace CareSheets.Tankmates.Tanks;

/// <summary>Who says between which figures a species fits.</summary>
public enum LimitBasis
{
    /// <summary>The entry states it.</summary>
    Sheet,

    /// <summary>The entry is silent on salt, and that means fresh water.</summary>
    FreshWater,

    /// <summary>The entry is silent, and relatives suggest it: they can speak against a figure, never for it.</summary>
    Relatives,

    /// <summary>The entry is silent, and the law of some place names a least size for a fish of its length.</summary>
    Law,

    /// <summary>Nobody: it is unknown.</summary>
    Nobody,
}
