namespace CareSheets.Relatives;

/// <summary>Ways in which a value goes wrong between head and keyboard.</summary>
public enum SlipKind
{
    FahrenheitForCelsius,
    CelsiusForFahrenheit,
    InchesForCentimetres,
    CentimetresForInches,
    PpmForDegrees,
    DegreesForPpm,
    StandardForTotalLength,
    DecimalLost,
    DecimalTooMany,
    ExchangedWith,
}

/// <summary>
/// What may have happened to a value: the value that was probably meant fits the relatives well.
/// </summary>
/// <param name="MeantLow">Lower end of what was probably meant, in the canonical unit.</param>
/// <param name="Other">The other entry, where two were exchanged; else empty.</param>
public sealed record LikelySlip(SlipKind Kind, double MeantLow, double MeantHigh, string Other);
