namespace CareSheets.Tankmates.Tanks;

/// <summary>Where a figure lies among limits.</summary>
public enum LimitState
{
    Within,

    /// <summary>Beyond by no more than a slip.</summary>
    Near,

    Beyond,

    /// <summary>The customer did not say it.</summary>
    NotGiven,
}
