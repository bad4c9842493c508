using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>
/// A tank in which the same share of water is replaced again and again: what is left of the
/// difference shrinks by that share each time.
/// </summary>
public static class WaterChange
{
    /// <summary>More changes than anybody makes.</summary>
    public const int Most = 1000;

    /// <summary>After so many changes: c₁ + (c₀ − c₁)(1 − r)ⁿ.</summary>
    public static SumResult<T> After<T>(T tank, T fresh, Share replaced, int times)
        where T : struct, IQuantity<T>
    {
        if (typeof(T) == typeof(Acidity))
            return new Refusal(RefusalReason.AcidityDoesNotBlend, T.Dimension, 0, null, null);
        if (times is < 0 or > Most)
            return new Refusal(RefusalReason.NothingHappens, T.Dimension, times, 0, Most);
        var left = Math.Pow(1 - replaced.InParts, times);
        return T.FromCanonical(fresh.Canonical + ((tank.Canonical - fresh.Canonical) * left));
    }

    /// <summary>The fewest changes after which the tank is at the target or beyond.</summary>
    public static SumResult<int> Until<T>(T tank, T fresh, Share replaced, T target)
        where T : struct, IQuantity<T>
    {
        if (typeof(T) == typeof(Acidity))
            return new Refusal(RefusalReason.AcidityDoesNotBlend, T.Dimension, 0, null, null);
        if (target.Equals(tank))
            return 0;
        var left = (target.Canonical - fresh.Canonical) / (tank.Canonical - fresh.Canonical);
        if (!(left is > 0 and < 1) || replaced == default)
            return Never(tank, fresh, target);
        var times = Math.Ceiling((Math.Log(left) / Math.Log(1 - replaced.InParts)) - 1e-9);
        return times <= Most ? (int)Math.Max(1, times) : Never(tank, fresh, target);
    }

    private static Refusal Never<T>(T tank, T fresh, T target)
        where T : struct, IQuantity<T> => new(
        RefusalReason.NeverReached, T.Dimension, target.Canonical,
        Math.Min(tank.Canonical, fresh.Canonical), Math.Max(tank.Canonical, fresh.Canonical));
}
