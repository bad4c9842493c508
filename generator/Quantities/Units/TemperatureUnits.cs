namespace CareSheets.Quantities.Units;

/// <summary>Degrees, once as places on a scale and once as distances on it.</summary>
/// <remarks>
/// °C = (°F − 32) ÷ 1.8 and, for a difference, Δ°C = Δ°F ÷ 1.8, both exact
/// (NIST SP 811, Appendix B, from memory). Kelvins are read only as a difference: "4 K" in a
/// field for a temperature is far likelier a swing than a place near absolute zero.
/// </remarks>
internal static class TemperatureUnits
{
    private static readonly string[] CelsiusSpellings =
        ["°C", "C", "deg C", "degree C", "degrees C", "Celsius", "degrees Celsius"];

    private static readonly string[] FahrenheitSpellings =
        ["°F", "F", "deg F", "degree F", "degrees F", "Fahrenheit", "degrees Fahrenheit"];

    public static readonly Unit Celsius =
        new("celsius", "°C", UnitSystem.Metric, CelsiusSpellings) { Step = 0.5 };

    public static readonly Unit Fahrenheit =
        new("fahrenheit", "°F", UnitSystem.US, FahrenheitSpellings)
        { Zero = 32, Over = 1.8, Step = 1 };

    public static readonly Unit Kelvin =
        new("kelvin", "K", UnitSystem.Metric, ["K", "kelvin", "kelvins"])
        { Step = 0.5, Steps = [new(0, 0.1), new(1, 0.5)] };

    public static readonly Unit CelsiusDegree = Celsius with
    {
        Key = "celsiusDegree",
        Steps = Kelvin.Steps,
    };

    public static readonly Unit FahrenheitDegree = Fahrenheit with
    {
        Key = "fahrenheitDegree",
        Zero = 0,
        Steps = [new(0, 0.1), new(2, 1)],
    };

    private static readonly string[] BareDegree = ["°", "deg", "degree", "degrees"];

    public static readonly Dimension Place =
        new("temperature", [Celsius, Fahrenheit], Celsius, Fahrenheit)
        {
            IsPoint = true,
            Minimum = -273.15, // absolute zero, by definition of the Celsius scale
            MetricUpTo = 45, // warmer than any water with fish in it: common practice, no source
            Ambiguous = [new(AmbiguityReason.WhichScale, BareDegree, [Celsius, Fahrenheit])],
            Example = "22–26 °C",
        };

    public static readonly Dimension Difference =
        new("temperatureDifference",
            [Kelvin, CelsiusDegree, FahrenheitDegree], CelsiusDegree, FahrenheitDegree)
        {
            Minimum = -double.MaxValue,
            Ambiguous =
                [new(AmbiguityReason.WhichScale, BareDegree, [CelsiusDegree, FahrenheitDegree])],
            Example = "2 °C",
        };
}
