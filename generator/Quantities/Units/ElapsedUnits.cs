namespace CareSheets.Quantities.Units;

/// <summary>Units for how long something took.</summary>
internal static class ElapsedUnits
{
    public static readonly Unit Hour =
        new("hour", "h", UnitSystem.Both, ["h", "hr", "hrs", "hour", "hours"])
        { Step = 1, Steps = [new(0, 0.1), new(3, 1)] };

    public static readonly Unit Minute =
        new("minute", "min", UnitSystem.Both, ["min", "mins", "minute", "minutes"])
        { Over = 60, Step = 5, Steps = [new(0, 1), new(20, 5)] };

    public static readonly Unit DayUnderWay =
        new("dayUnderWay", "d", UnitSystem.Both, ["d", "day", "days"]) { Times = 24, Step = 0.5 };

    public static readonly Dimension Time =
        new("elapsed", [Hour, Minute, DayUnderWay], Hour, Hour)
        {
            Example = "26 h",
            OrPerhaps = Minute,
        };
}
