using System.Numerics;
using CareSheets.Quantities;
using CsCheck;

namespace CareSheets.Tests.Quantities.Laws;

/// <summary>
/// What holds for every place on a scale besides: differences lead from one to another.
/// </summary>
internal static class PointLaws
{
    private const double Tolerance = 1e-12;

    public static void Hold<T, TDifference>(double low, double high)
        where T : struct, IQuantity<T>,
            ISubtractionOperators<T, T, TDifference>, IAdditionOperators<T, TDifference, T>
        where TDifference : struct, IAmount<TDifference>
    {
        QuantityLaws.Hold<T>(low, high);
        Assert.True(T.Dimension.IsPoint);
        Assert.False(TDifference.Dimension.IsPoint);
        var values = Gen.Double[low, high].Select(T.FromCanonical);
        Gen.Select(values, values, values).Sample((a, b, c) =>
        {
            Assert.Equal(default, a - a);
            Assert.Equal(a, a + default(TDifference));
            Assert.Equal(a < b, a - b < default(TDifference));
            Same(b.Canonical, (a + (b - a)).Canonical, high);
            Same((a - c).Canonical, ((a - b) + (b - c)).Canonical, high);
        });
    }

    private static void Same(double expected, double actual, double scale) =>
        Assert.Equal(expected, actual, Tolerance * Math.Abs(scale));
}
