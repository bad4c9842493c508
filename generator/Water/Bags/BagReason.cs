namespace CareSheets.Water.Bags;

/// <summary>The weightiest reason for an advice, the most careful first.</summary>
public enum BagReason
{
    /// <summary>The step of pH from bag to tank is larger than the limit.</summary>
    AcidityApart,

    /// <summary>Its ammonia harms while it is closed, and it would have to float to be as warm as the tank.</summary>
    HarmsAfloat,

    /// <summary>Its ammonia was not measured, and long bags are full of it.</summary>
    AmmoniaUnknown,

    /// <summary>Un-ionised ammonia would pass what harms, once CO₂ leaves or tank water comes in.</summary>
    WouldHarm,

    /// <summary>It would pass what nobody objects to.</summary>
    WouldPassGoal,

    /// <summary>The tank's pH is not known, so nobody can say what mixing does.</summary>
    TankUnknown,

    LongUnderWay,

    /// <summary>How long it was under way is not known.</summary>
    HoursUnknown,

    /// <summary>The tank's pH is well above the bag's.</summary>
    Rises,

    /// <summary>All measured figures stay within the limits.</summary>
    StaysLow,
}
