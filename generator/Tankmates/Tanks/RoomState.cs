namespace CareSheets.Tankmates.Tanks;

/// <summary>How a tank stands to what a group asks for together.</summary>
public enum RoomState
{
    Enough,

    /// <summary>Less than the entries ask for one after the other.</summary>
    BelowSum,

    /// <summary>Less than a share of that sum, below which nobody should try.</summary>
    BelowShare,

    /// <summary>Less than the least that one law asks for, which is not what fish need.</summary>
    BelowSwissLeast,
}
