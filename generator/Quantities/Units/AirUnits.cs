namespace CareSheets.Quantities.Units;

/// <summary>Units for the air above the water: its pressure, and how high the place lies.</summary>
/// <remarks>
/// 1 atm = 101.325 kPa exactly = 760 mmHg, which makes the mmHg of old tables 133.322387 Pa where the
/// torr is meant; 1 inHg = 3386.389 Pa; 1 ft = 0.3048 m exactly (NIST SP 811, Appendix B, from memory).
/// </remarks>
internal static class AirUnits
{
    private static readonly StepFrom[] HeightSteps = [new(0, 1), new(100, 10), new(1000, 50)];

    public static readonly Unit Kilopascal =
        new("kilopascal", "kPa", UnitSystem.Metric, ["kPa"]) { Step = 0.1 };

    public static readonly Unit Hectopascal =
        new("hectopascal", "hPa", UnitSystem.Metric, ["hPa", "mbar", "millibar", "millibars"])
        { Over = 10, Step = 1 };

    public static readonly Unit Atmosphere =
        new("atmosphere", "atm", UnitSystem.Metric, ["atm"])
        { Times = 101.325, Step = 0.01, IsAlwaysTranslated = true };

    public static readonly Unit MillimetreOfMercury =
        new("millimetreOfMercury", "mmHg", UnitSystem.Both, ["mmHg", "mm Hg", "torr"])
        { Times = 0.133322387415, Step = 1 };

    public static readonly Unit InchOfMercury =
        new("inchOfMercury", "inHg", UnitSystem.US, ["inHg", "in Hg", "inches Hg"])
        { Times = 3.386389, Step = 0.1 };

    public static readonly Unit MetreAboveSea =
        new("metreAboveSea", "m", UnitSystem.Metric, ["m", "metre", "metres", "meter", "meters"])
        { Step = 10, Steps = HeightSteps };

    public static readonly Unit FootAboveSea =
        new("footAboveSea", "ft", UnitSystem.US, ["ft", "foot", "feet"])
        { Times = 0.3048, Step = 10, Steps = HeightSteps };

    public static readonly Dimension Pressure =
        new("pressure",
            [Kilopascal, Hectopascal, Atmosphere, MillimetreOfMercury, InchOfMercury],
            Hectopascal, InchOfMercury)
        { Example = "1013 hPa" };

    public static readonly Dimension Height =
        new("altitude", [MetreAboveSea, FootAboveSea], MetreAboveSea, FootAboveSea)
        { IsPoint = true, Minimum = -500, Maximum = 9000, Example = "250 m" };
}
