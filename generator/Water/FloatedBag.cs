using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>A sealed bag afloat in a tank, whose warmth comes nearer to the tank's.</summary>
/// <remarks>
/// The difference shrinks as e^(−t ÷ τ) (Newton's law of cooling), as long as the tank stays as it is.
/// τ depends on the bag: two readings of one's own give it.
/// </remarks>
public static class FloatedBag
{
    /// <summary>The bag after a time afloat.</summary>
    public static Temperature After(
        Temperature bag, Temperature tank, Elapsed afloat, Elapsed timeConstant) =>
        tank + ((bag - tank) * Math.Exp(-afloat.InHours / timeConstant.InHours));

    /// <summary>Until no more than this difference is left; none if it is so already.</summary>
    public static SumResult<Elapsed> Until(
        Temperature bag, Temperature tank, TemperatureDifference left, Elapsed timeConstant)
    {
        var apart = Math.Abs((bag - tank).InKelvins);
        if (left.InKelvins <= 0 || timeConstant == default)
            return new Refusal(
                RefusalReason.NothingHappens, DimensionCatalogue.TemperatureDifference, left.InKelvins, 0, null);
        return timeConstant * Math.Max(0, Math.Log(apart / left.InKelvins));
    }

    /// <summary>τ of a bag from two readings in the same tank.</summary>
    public static SumResult<Elapsed> TimeConstant(
        Temperature first, Temperature later, Temperature tank, Elapsed between)
    {
        var ratio = (first - tank).InKelvins / (later - tank).InKelvins;
        return ratio > 1 && double.IsFinite(ratio) && between > default(Elapsed)
            ? between / Math.Log(ratio)
            : new Refusal(
                RefusalReason.NotApproaching, DimensionCatalogue.Temperature, later.InCelsius,
                Math.Min(first.InCelsius, tank.InCelsius), Math.Max(first.InCelsius, tank.InCelsius));
    }
}
