namespace CareSheets.Quantities;

/// <summary>Why something that looks like a unit does not yet say how much.</summary>
public enum AmbiguityReason
{
    /// <summary>A US gallon holds 3.785 L, an imperial one 4.546 L.</summary>
    WhichGallon,

    /// <summary>Milligrams per litre of what: CaCO₃, CaO, calcium?</summary>
    WhichSubstance,

    /// <summary>Degrees of which scale?</summary>
    WhichScale,

    /// <summary>Siemens are per length: centimetre or metre?</summary>
    PerWhichLength,

    /// <summary>A share by mass or a density: grams per litre need the temperature too.</summary>
    NeedsDensity,

    /// <summary>Dissolved solids follow from conductivity only by a factor that varies.</summary>
    NeedsFactor,
}
