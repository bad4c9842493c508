namespace CareSheets.Quantities.Units;

/// <summary>Units for the water a tank holds.</summary>
/// <remarks>
/// 1 US gal = 231 in³ = 3.785411784 L exactly (16 CFR 500.19 prints 3.785 41; all digits in
/// NIST SP 811, Appendix B, from memory); 1 imperial gallon = 4.54609 L exactly (from memory).
/// </remarks>
internal static class VolumeUnits
{
    public const double LitresPerUSGallon = 3.785411784;
    public const double LitresPerImperialGallon = 4.54609;

    private static readonly StepFrom[] TankSteps = [new(0, 0.1), new(1, 1), new(20, 5)];

    public static readonly Unit Litre =
        new("litre", "L", UnitSystem.Metric, ["L", "litre", "litres", "liter", "liters"])
        { Step = 1, Steps = TankSteps };

    public static readonly Unit Millilitre =
        new("millilitre", "mL", UnitSystem.Metric,
            ["mL", "millilitre", "millilitres", "milliliter", "milliliters"])
        { Over = 1000, Step = 10 };

    public static readonly Unit USGallon =
        new("usGallon", "US gal", UnitSystem.US,
            ["US gal", "gal US", "gal (US)", "US gallon", "US gallons"])
        { Times = LitresPerUSGallon, Step = 1, Steps = TankSteps };

    public static readonly Unit ImperialGallon =
        new("imperialGallon", "imp gal", UnitSystem.Metric,
            ["imp gal", "imperial gal", "imperial gallon", "imperial gallons",
             "UK gal", "UK gallon", "UK gallons"])
        {
            Times = LitresPerImperialGallon,
            Step = 1,
            Steps = TankSteps,
            IsAlwaysTranslated = true,
        };

    public static readonly Dimension Capacity =
        new("volume", [Litre, Millilitre, USGallon, ImperialGallon], Litre, USGallon)
        {
            Ambiguous =
            [
                new(AmbiguityReason.WhichGallon, ["gal", "gals", "gallon", "gallons"],
                    [USGallon, ImperialGallon]),
            ],
            Example = "45 L",
        };
}
