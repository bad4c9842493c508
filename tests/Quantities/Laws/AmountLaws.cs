using CareSheets.Quantities;
using CsCheck;

namespace CareSheets.Tests.Quantities.Laws;

/// <summary>
/// What holds for every amount besides: it adds and scales, and nothing is its zero.
/// </summary>
internal static class AmountLaws
{
    private const double Relative = 1e-12;

    public static void Hold<T>(double high)
        where T : struct, IAmount<T>
    {
        QuantityLaws.Hold<T>(0, high);
        var values = Gen.Double[0, high / 4].Select(T.FromCanonical);
        Gen.Select(values, values, values).Sample(SumsHold);
        Gen.Select(values, values, Gen.Double[0.25, 2]).Sample(ScalesHold);
    }

    private static void SumsHold<T>((T A, T B, T C) of)
        where T : struct, IAmount<T>
    {
        var (a, b, c) = of;
        Assert.Equal(a, a + default(T));
        Assert.Equal(a + b, b + a);
        Same(a + (b + c), (a + b) + c);
        Same(a, (a + b) - b, scale: (a + b).Canonical);
        Assert.Equal(default, a - a);
        Assert.True(a + b >= a);
    }

    private static void ScalesHold<T>((T A, T B, double By) of)
        where T : struct, IAmount<T>
    {
        var (a, b, by) = of;
        Assert.Equal(a, a * 1);
        Assert.Equal(default, a * 0);
        Same(a + a, a * 2);
        Same((a + b) * by, (a * by) + (b * by));
        Same(a, a * by / by);
    }

    private static void Same<T>(T expected, T actual, double scale = 0)
        where T : struct, IAmount<T> =>
        Assert.Equal(
            expected.Canonical, actual.Canonical,
            Relative * Math.Max(scale, Math.Abs(expected.Canonical)));
}
