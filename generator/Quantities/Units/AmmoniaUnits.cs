namespace CareSheets.Quantities.Units;

/// <summary>Units for ammonia, each with what its milligrams are of.</summary>
/// <remarks>
/// Molar masses in g/mol: N 14.0067, NH₃ 17.0305, NH₄ 18.0385 (all from memory; the factor 1.21588
/// from N to NH₃ is held by a test). In fresh water a part per million is a milligram per litre,
/// to within half a percent.
/// </remarks>
internal static class AmmoniaUnits
{
    private const double Nitrogen = 14.0067;
    private const double UnionisedAmmonia = 17.0305;
    private const double Ammonium = 18.0385;

    public static readonly Unit MilligramOfNitrogen =
        new("milligramOfNitrogen", "mg/L as N", UnitSystem.Both,
            ["mg/L as N", "mg/L N", "mg N/L", "mg/L NH3-N", "ppm as N", "ppm N"])
        { Step = 0.1, Steps = [new(0, 0.001), new(0.1, 0.01), new(1, 0.1)] };

    public static readonly Unit MilligramOfAmmonia =
        new("milligramOfAmmonia", "mg/L as NH₃", UnitSystem.Both,
            ["mg/L as NH3", "mg/L NH3", "mg NH3/L", "ppm as NH3", "ppm NH3"])
        {
            Times = Nitrogen,
            Over = UnionisedAmmonia,
            Step = 0.1,
            Steps = MilligramOfNitrogen.Steps,
        };

    public static readonly Unit MilligramOfAmmonium =
        new("milligramOfAmmonium", "mg/L as NH₄", UnitSystem.Both,
            ["mg/L as NH4", "mg/L NH4", "mg NH4/L", "ppm as NH4", "ppm NH4"])
        {
            Times = Nitrogen,
            Over = Ammonium,
            Step = 0.1,
            Steps = MilligramOfNitrogen.Steps,
        };

    public static readonly Dimension Content =
        new("ammonia", [MilligramOfNitrogen, MilligramOfAmmonia, MilligramOfAmmonium],
            MilligramOfNitrogen, MilligramOfNitrogen)
        {
            Ambiguous =
            [
                new(AmbiguityReason.WhichSubstance, ["mg/L", "ppm"],
                    [MilligramOfNitrogen, MilligramOfAmmonia, MilligramOfAmmonium]),
            ],
            Example = "2 mg/L as N",
        };
}
