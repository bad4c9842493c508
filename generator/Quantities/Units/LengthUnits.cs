namespace CareSheets.Quantities.Units;

/// <summary>Units for the size of a fish or the side of a tank.</summary>
/// <remarks>
/// Small fishes are told to a tenth of an inch, for half an inch more would be a quarter of a fish of 4 cm.
/// 1 in = 2.54 cm exactly (16 CFR 500.19; NIST SP 811, Appendix B, from memory); 1 ft = 12 in.
/// </remarks>
internal static class LengthUnits
{
    public static readonly Unit Centimetre =
        new("centimetre", "cm", UnitSystem.Metric,
            ["cm", "centimetre", "centimetres", "centimeter", "centimeters"])
        { Step = 0.5, Steps = [new(0, 0.1), new(1, 0.5), new(10, 1)] };

    public static readonly Unit Millimetre =
        new("millimetre", "mm", UnitSystem.Metric,
            ["mm", "millimetre", "millimetres", "millimeter", "millimeters"])
        { Over = 10, Step = 1 };

    public static readonly Unit Metre =
        new("metre", "m", UnitSystem.Metric, ["m", "metre", "metres", "meter", "meters"])
        { Times = 100, Step = 0.05 };

    public static readonly Unit Inch =
        new("inch", "in", UnitSystem.US, ["in", "inch", "inches", "\""])
        { Times = 2.54, Step = 0.5, Steps = [new(0, 0.1), new(12, 0.5), new(40, 1)] };

    public static readonly Unit Foot =
        new("foot", "ft", UnitSystem.US, ["ft", "foot", "feet", "'"])
        { Times = 30.48, Step = 0.5 };

    public static readonly Dimension Extent =
        new("length", [Centimetre, Millimetre, Metre, Inch, Foot], Centimetre, Inch)
        { Example = "5 cm" };
}
