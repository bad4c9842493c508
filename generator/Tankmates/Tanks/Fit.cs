namespace CareSheets.Tankmates.Tanks;

/// <summary>Whether a species fits a tank and its water, in growing order of concern.</summary>
public enum Fit
{
    Fits,

    /// <summary>A little beyond what it needs, or something needed is unknown.</summary>
    Nearly,

    DoesNotFit,
}
