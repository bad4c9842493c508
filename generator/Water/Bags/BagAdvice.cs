namespace CareSheets.Water.Bags;

/// <summary>How to open a bag, the most careful first.</summary>
public enum BagAdvice
{
    /// <summary>
    /// Not into this tank yet: at once into clean water near the bag's own, which comes to the tank's over days.
    /// </summary>
    ReceiveApart,

    /// <summary>Float it sealed, then move the fishes at once; none of its water comes along.</summary>
    AtOnce,

    /// <summary>Likewise, and mixing on the way is kept to a few minutes.</summary>
    Briefly,

    /// <summary>Nothing measured speaks against mixing slowly.</summary>
    MayMix,
}
