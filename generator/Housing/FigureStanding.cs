namespace CareSheets.Housing;

/// <summary>How a figure of a water stands to the range in which a species is kept.</summary>
public enum FigureStanding
{
    Fits,
    TooLow,
    TooHigh,

    /// <summary>The entry does not say, so nobody can say that it fits.</summary>
    UnknownOfSpecies,

    /// <summary>The entry does not say, and its relatives suggest something else.</summary>
    RelativesApart,

    /// <summary>The shop's record does not say.</summary>
    UnknownOfWater,

    /// <summary>The tap's own temperature does not count.</summary>
    LeftToHeater,
}
