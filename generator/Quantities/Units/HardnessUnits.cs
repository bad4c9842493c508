namespace CareSheets.Quantities.Units;

/// <summary>
/// Units of general hardness (calcium and magnesium) and of carbonate hardness (acid capacity),
/// both counted in mg/L CaCO₃.
/// </summary>
/// <remarks>
/// Definitions: 1 °dH = 10 mg CaO per litre; 1 °fH = 10 mg CaCO₃ per litre; 1 °e (Clark) = 1 grain
/// CaCO₃ per imperial gallon; 1 gpg = 1 grain CaCO₃ per US gallon; the grain is 64.79891 mg
/// exactly; molar masses in g/mol are CaCO₃ 100.0869 and CaO 56.0774 (all from memory; the tests
/// compare with two figures seen in print). The gallons are those of <see cref="VolumeUnits"/>.
/// </remarks>
internal static class HardnessUnits
{
    private const double CalciumCarbonate = 100.0869;
    private const double CalciumOxide = 56.0774;
    private const double Grain = 64.79891;

    private static readonly StepFrom[] DegreeSteps = [new(0, 0.1), new(2, 0.5), new(10, 1)];
    private static readonly StepFrom[] MilligramSteps = [new(0, 1), new(20, 5), new(200, 10)];

    public static readonly Unit MilligramPerLitre =
        new("milligramPerLitre", "mg/L CaCO₃", UnitSystem.Both,
            ["mg/L CaCO3", "mg/L as CaCO3", "mg CaCO3/L"])
        { Step = 5, Steps = MilligramSteps };

    public static readonly Unit PartPerMillion =
        new("partPerMillion", "ppm CaCO₃", UnitSystem.US, ["ppm CaCO3", "ppm as CaCO3"])
        { Step = 5, Steps = MilligramSteps };

    public static readonly Unit GermanDegree =
        new("germanDegree", "°dH", UnitSystem.Metric, ["°dH", "dH"])
        {
            Times = 10 * CalciumCarbonate,
            Over = CalciumOxide,
            Step = 0.5,
            Steps = DegreeSteps,
        };

    public static readonly Unit FrenchDegree =
        new("frenchDegree", "°fH", UnitSystem.Metric, ["°fH", "fH"])
        { Times = 10, Step = 0.5, Steps = DegreeSteps, IsAlwaysTranslated = true };

    public static readonly Unit ClarkDegree =
        new("clarkDegree", "°e", UnitSystem.Metric, ["°e", "°Clark", "Clark", "degrees Clark"])
        {
            Times = Grain,
            Over = VolumeUnits.LitresPerImperialGallon,
            Step = 0.5,
            Steps = DegreeSteps,
            IsAlwaysTranslated = true,
        };

    public static readonly Unit GrainPerGallon =
        new("grainPerGallon", "gpg", UnitSystem.US, ["gpg"])
        {
            Times = Grain,
            Over = VolumeUnits.LitresPerUSGallon,
            Step = 0.5,
            Steps = DegreeSteps,
        };

    /// <summary>One mole of charge is half a mole of Ca²⁺, Mg²⁺ or CaCO₃.</summary>
    public static readonly Unit Milliequivalent =
        new("milliequivalent", "meq/L", UnitSystem.Metric, ["meq/L"])
        { Times = CalciumCarbonate, Over = 2, Step = 0.1 };

    /// <summary>Of Ca²⁺ and Mg²⁺ ions together: each stands for one CaCO₃.</summary>
    public static readonly Unit MillimoleOfIons =
        new("millimoleOfIons", "mmol/L", UnitSystem.Metric, ["mmol/L"])
        { Times = CalciumCarbonate, Step = 0.1 };

    /// <summary>Of acid capacity, that is of bicarbonate: two stand for one CaCO₃.</summary>
    public static readonly Unit MillimoleOfAcidCapacity =
        new("millimoleOfAcidCapacity", "mmol/L", UnitSystem.Metric, ["mmol/L"])
        { Times = CalciumCarbonate, Over = 2, Step = 0.1 };

    private static readonly Unit[] Shared =
    [
        MilligramPerLitre, PartPerMillion, FrenchDegree, ClarkDegree, GrainPerGallon,
        Milliequivalent,
    ];

    private static readonly AmbiguousUnit OfWhat =
        new(AmbiguityReason.WhichSubstance, ["mg/L", "ppm"], [PartPerMillion, MilligramPerLitre]);

    public static readonly Dimension General = Make(
        "generalHardness", ["°dGH", "dGH", "°GH"], "°dH", MillimoleOfIons, "4–18 °dH");

    public static readonly Dimension Carbonate = Make(
        "carbonateHardness", ["°dKH", "dKH", "°KH"], "°dKH", MillimoleOfAcidCapacity, "2–8 °dKH");

    /// <remarks>°dH is said of both; °dGH and °dKH each belong to one, and readers see which is meant.</remarks>
    private static Dimension Make(string key, string[] degrees, string symbol, Unit millimole, string example)
    {
        var degree = GermanDegree with { Symbol = symbol, Spellings = [.. GermanDegree.Spellings, .. degrees] };
        return new(key, [.. Shared, degree, millimole], degree, PartPerMillion)
        {
            Ambiguous =
            [
                OfWhat,
                new(AmbiguityReason.WhichScale, ["°", "deg", "degree", "degrees"],
                    [degree, FrenchDegree, ClarkDegree]),
            ],
            Example = example,
        };
    }
}
