namespace CareSheets.Quantities.Units;

/// <summary>Units for what is dissolved: by how well the water conducts, and by its salt.</summary>
internal static class SolutionUnits
{
    /// <summary>Referred to 25 °C, as meters display it.</summary>
    public static readonly Unit MicrosiemensPerCentimetre =
        new("microsiemensPerCentimetre", "µS/cm", UnitSystem.Both, ["µS/cm", "uS/cm"])
        { Step = 10, Steps = [new(0, 1), new(100, 10), new(1000, 50)] };

    public static readonly Unit MillisiemensPerCentimetre =
        new("millisiemensPerCentimetre", "mS/cm", UnitSystem.Both, ["mS/cm"])
        { Times = 1000, Step = 0.1 };

    public static readonly Unit MillisiemensPerMetre =
        new("millisiemensPerMetre", "mS/m", UnitSystem.Both, ["mS/m"]) { Times = 10, Step = 1 };

    public static readonly Unit DecisiemensPerMetre =
        new("decisiemensPerMetre", "dS/m", UnitSystem.Both, ["dS/m"])
        { Times = 1000, Step = 0.1 };

    public static readonly Unit GramPerLitre =
        new("gramPerLitre", "g/L", UnitSystem.Both, ["g/L"]) { Step = 0.1 };

    public static readonly Unit MilligramPerLitre =
        new("milligramPerLitre", "mg/L", UnitSystem.Both, ["mg/L"]) { Over = 1000, Step = 50 };

    public static readonly Unit MilligramDissolved =
        new("milligramDissolved", "mg/L", UnitSystem.Both, ["mg/L"])
        { Step = 0.1, Steps = [new(0, 0.01), new(1, 0.1), new(20, 1)] };

    /// <summary>By mass: in fresh water a milligram per litre, to within half a percent.</summary>
    public static readonly Unit PartPerMillionDissolved =
        new("partPerMillionDissolved", "ppm", UnitSystem.Both, ["ppm"])
        { Step = 0.1, Steps = MilligramDissolved.Steps };

    public static readonly Dimension Dissolved =
        new("concentration", [MilligramDissolved, PartPerMillionDissolved],
            MilligramDissolved, MilligramDissolved)
        { Example = "6 mg/L" };

    public static readonly Dimension Conductivity =
        new("conductivity",
            [MicrosiemensPerCentimetre, MillisiemensPerCentimetre, MillisiemensPerMetre,
             DecisiemensPerMetre],
            MicrosiemensPerCentimetre, MicrosiemensPerCentimetre)
        {
            Ambiguous =
            [
                new(AmbiguityReason.PerWhichLength, ["µS", "uS"], [MicrosiemensPerCentimetre]),
                new(AmbiguityReason.PerWhichLength, ["mS"],
                    [MillisiemensPerCentimetre, MillisiemensPerMetre]),
                new(AmbiguityReason.NeedsFactor, ["ppm", "TDS", "ppm TDS"],
                    [MicrosiemensPerCentimetre]),
            ],
            Example = "100–300 µS/cm",
        };

    public static readonly Dimension Salinity =
        new("salinity", [GramPerLitre, MilligramPerLitre], GramPerLitre, GramPerLitre)
        {
            Ambiguous =
            [
                new(AmbiguityReason.NeedsDensity,
                    ["ppt", "‰", "g/kg", "%", "sg", "s.g.", "specific gravity", "psu", "PSS"],
                    [GramPerLitre]),
            ],
            Example = "2–5 g/L",
        };
}
