namespace CareSheets.Tankmates.Tanks;

/// <summary>What kept a text from being read as a tank.</summary>
public enum TankProblem
{
    /// <summary>Neither three sides nor one volume.</summary>
    NotThreeSides,

    /// <summary>A side is no length with a unit, such as 120 cm.</summary>
    NotALength,

    /// <summary>It is no volume with a unit, such as 240 L; a gallon has to say which.</summary>
    NotAVolume,

    /// <summary>No tank for fish is that small or that large.</summary>
    Impossible,
}
