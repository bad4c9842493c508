using CareSheets.Quantities;
using CsCheck;

namespace CareSheets.Tests.Quantities.Laws;

/// <summary>
/// What holds for every quantity: equality, order, and doors that refuse nonsense.
/// </summary>
internal static class QuantityLaws
{
    /// <summary>Checks all of them on canonical values between the two given.</summary>
    public static void Hold<T>(double low, double high)
        where T : struct, IQuantity<T>
    {
        var values = Gen.Double[low, high].Select(T.FromCanonical);
        Gen.Select(values, values, values).Sample(OrderHolds);
        values.Sample(value => EqualityHolds(value, T.FromCanonical(value.Canonical)));
        DoorsRefuse<T>(double.NaN, double.PositiveInfinity, double.NegativeInfinity);
        DoorsRefuse<T>(OutsideLimits(T.Dimension));
        Assert.Equal(0, default(T).Canonical);
    }

    private static void EqualityHolds<T>(T value, T twin)
        where T : struct, IQuantity<T>
    {
        Assert.True(value == twin && !(value != twin));
        Assert.True(value.Equals(twin) && value.Equals((object)twin) && !value.Equals(null));
        Assert.Equal(value.GetHashCode(), twin.GetHashCode());
        Assert.Equal(0, value.CompareTo(twin));
        Assert.True(value <= twin && value >= twin);
    }

    private static void OrderHolds<T>((T A, T B, T C) of)
        where T : struct, IQuantity<T>
    {
        var (a, b, c) = of;
        Assert.Equal(a.Canonical.CompareTo(b.Canonical), a.CompareTo(b));
        Assert.Equal(a.CompareTo(b) < 0, a < b);
        Assert.Equal(a.CompareTo(b) > 0, a > b);
        Assert.Equal(a < b, b > a);
        Assert.Equal(a <= b, !(a > b));
        Assert.Equal(a >= b, !(a < b));
        Assert.Equal(a == b, a.Equals(b));
        Assert.True(!(a <= b && b <= c) || a <= c);
    }

    /// <summary>The next number beyond each limit, which may be infinite.</summary>
    private static double[] OutsideLimits(Dimension dimension) =>
        [double.BitDecrement(dimension.Minimum), double.BitIncrement(dimension.Maximum)];

    private static void DoorsRefuse<T>(params double[] impossible)
        where T : struct, IQuantity<T> =>
        Assert.All(impossible, value =>
            Assert.Throws<ArgumentOutOfRangeException>(() => T.FromCanonical(value)));
}
