namespace CareSheets.Water;

/// <summary>Why a sum has no answer.</summary>
public enum RefusalReason
{
    /// <summary>Outside the range for which the formula is stated; the range is carried.</summary>
    OutsideFormula,

    /// <summary>A target that lies between no two of the waters; their figures are carried.</summary>
    BetweenNoWaters,

    /// <summary>Two waters with the same figure, which no blend of them changes.</summary>
    SameWaters,

    /// <summary>pH is a logarithm: a blend of two waters does not have the mean of theirs.</summary>
    AcidityDoesNotBlend,

    /// <summary>An alkalinity too small for so high a pH; the least that it takes is carried.</summary>
    NoSuchWater,

    /// <summary>So soft or so acid that pH and carbonate hardness tell nothing of CO₂.</summary>
    OtherIonsDecide,

    /// <summary>Two readings of one water that would have it hold more gas than water can.</summary>
    ReadingsApart,

    /// <summary>Nothing is mixed, replaced or waited for.</summary>
    NothingHappens,

    /// <summary>Water changes come nearer to the fresh water, never to it or beyond.</summary>
    NeverReached,

    /// <summary>Two readings of a bag that do not come nearer to the tank.</summary>
    NotApproaching,
}
