namespace CareSheets.Quantities.Units;

/// <summary>Units for how long an animal lives.</summary>
/// <remarks>
/// The year is the Julian year of 365.25 days (IAU Style Manual, 1989; from memory), a month its
/// twelfth part.
/// </remarks>
internal static class DurationUnits
{
    private const double DaysPerYear = 365.25;

    public static readonly Unit Year =
        new("year", "yr", UnitSystem.Both, ["yr", "yrs", "year", "years", "y"])
        { Step = 0.5, Steps = [new(0, 0.1), new(1, 0.5), new(10, 1)] };

    public static readonly Unit Month =
        new("month", "mo", UnitSystem.Both, ["mo", "mos", "month", "months"])
        { Over = 12, Step = 1 };

    public static readonly Unit Week =
        new("week", "wk", UnitSystem.Both, ["wk", "wks", "week", "weeks"])
        { Times = 7, Over = DaysPerYear, Step = 1 };

    public static readonly Unit Day =
        new("day", "d", UnitSystem.Both, ["d", "day", "days"]) { Over = DaysPerYear, Step = 1 };

    public static readonly Dimension LifeSpan =
        new("duration", [Year, Month, Week, Day], Year, Year) { Example = "3–5 years" };
}
