using CareSheets.Water;
using static CareSheets.Tests.Water.Printed;

namespace CareSheets.Tests.Water;

/// <summary>Plummer and Busenberg 1982, and Nordstrom et al. 1990 for water itself.</summary>
public sealed class CarbonateConstantsTests
{
    // Six decimals as seen in a public file of a geochemical program for 20, 25, 40, 60 and 80 °C (pK1), the rest
    // computed by other code from the published coefficients: °C, pK1, pK2, pKH, pKw.
    private const string Logarithms = """
        0  6.578562 10.628572 1.108383 14.942096
        5  6.516302 10.554413 1.192068 14.732231
        10 6.463342 10.487878 1.269375 14.533826
        15 6.418795 10.428426 1.340820 14.346057
        20 6.381871 10.375567 1.406868 14.168183
        25 6.351864 10.328854 1.467940 13.999531
        30 6.328147 10.287880 1.524416 13.839491
        35 6.310158 10.252273 1.576641 13.687510
        40 6.297395 10.221694 1.624926 13.543084
        60 6.290305 10.143808 1.783981 13.032327
        80 6.338232 10.125582 1.898660 12.612056
        """;

    [Fact]
    public void Constants_are_the_published_ones() => Assert.All(Rows(Logarithms), row =>
    {
        var of = CarbonateConstants.At(Warm(row[0])).Value;
        Assert.Equal(row[1], -Math.Log10(of.K1), 1e-6);
        Assert.Equal(row[2], -Math.Log10(of.K2), 1e-6);
        Assert.Equal(row[3], -Math.Log10(of.KH), 1e-6);
        Assert.Equal(row[4], -Math.Log10(of.KW), 1e-6);
    });

    // A reference table quoted on a mailing list in 2002; its 10 °C is rounded oddly.
    [Theory]
    [InlineData(0, 6.58)]
    [InlineData(5, 6.52)]
    [InlineData(10, 6.47)]
    [InlineData(15, 6.42)]
    [InlineData(20, 6.38)]
    [InlineData(25, 6.35)]
    [InlineData(30, 6.33)]
    public void A_quoted_table_agrees_to_a_hundredth(double celsius, double pK1) =>
        Assert.Equal(pK1, -Math.Log10(CarbonateConstants.At(Warm(celsius)).Value.K1), 0.01);

    // Misprints that are about: −107.881 for −107.8871 in K2, −0.060919964 for −0.06091964 in K1.
    [Fact]
    public void The_misprinted_coefficients_are_not_used()
    {
        Assert.Equal(-107.8871, CarbonateConstants.Second[0]);
        Assert.Equal(-0.06091964, CarbonateConstants.First[1]);
        Assert.True(Math.Abs(-107.881 - CarbonateConstants.Second[0]) > 0.006);
    }

    // T = t + 273 or 273.16 is seen too; at 25 °C that moves pK1 by 1.1e-3 or 7e-5, beyond the six decimals above.
    [Fact]
    public void Kelvins_begin_at_273_15() => Assert.Equal(273.15, UnionisedAmmonia.Kelvins);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(90.1)]
    public void Beyond_0_to_90_degrees_they_are_refused(double celsius)
    {
        var refusal = CarbonateConstants.At(Warm(celsius)).Refusal!;
        Assert.Equal((RefusalReason.OutsideFormula, 0.0, 90.0), (refusal.Reason, refusal.Low, refusal.High));
    }
}
