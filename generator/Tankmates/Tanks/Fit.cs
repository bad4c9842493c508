namespace CareSheets.Tankmates.Tanks;

/// <summary>Whether a species fits a tank and its water, in growing order of concern.</summary>
public enum Fit
{
    Fits,

    /// <summary>A little beyond what it needs.</summary>
    Nearly,

    /// <summary>Something that counts is unknown of it, or was not said of the tank.</summary>
    NotKnown,

    DoesNotFit,
}
