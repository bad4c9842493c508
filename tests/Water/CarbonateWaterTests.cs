using CareSheets.Quantities;
using CareSheets.Water;
using static CareSheets.Tests.Water.Printed;

namespace CareSheets.Tests.Water;

/// <summary>CO₂ from alkalinity and pH, pH when CO₂ leaves, and two waters mixed.</summary>
public sealed class CarbonateWaterTests
{
    // Computed by other code with all ions: °dKH, pH, °C, CO₂ if all alkalinity were bicarbonate, CO₂ in full, and
    // the rule of thumb 3 · KH · 10^(7 − pH).
    private const string Gas = """
        4  7.0 25 14.1160 14.1028 12.0000
        4  6.6 25 35.4579 35.4499 30.1426
        4  7.6 25 3.5458 3.5317 3.0143
        10 7.2 25 22.2665 22.2329 18.9287
        2  6.5 25 22.3194 22.3217 18.9737
        8  7.5 20 9.5664 9.5404 7.5895
        4  7.0 20 15.1258 15.1134 12.0000
        15 8.3 25 2.6530 2.6033 2.2553
        """;

    // Tucker 1984 as reprinted (mg/L CO₂ for each mg/L CaCO₃ of alkalinity) at 10, 15, 20, 25 and 30 °C. Three
    // misprints of the reprint are not among these rows.
    private const string Tucker = """
        6.0 2.539 2.315 2.112 1.970 1.882
        6.4 1.010 0.921 0.841 0.784 0.749
        6.8 0.402 0.367 0.335 0.313 0.298
        7.0 0.254 0.232 0.211 0.197 0.188
        7.2 0.160 0.146 0.133 0.124 0.119
        """;

    // Computed by other code: °dKH, pH in air of 400 parts per million at 20 and at 25 °C.
    private const string Aired = """
        1  7.7365 7.7669
        2  8.0356 8.0656
        4  8.3327 8.3621
        8  8.6264 8.6544
        16 8.9136 8.9394
        """;

    [Fact]
    public void Gas_follows_from_alkalinity_and_pH() => Assert.All(Rows(Gas), row =>
        Assert.Equal(row[4], Of(row[0], row[1], row[2]).CarbonDioxide.InMilligramsPerLitre, 1e-4));

    [Fact]
    public void All_alkalinity_as_bicarbonate_comes_within_two_percent() => Assert.All(Rows(Gas), row =>
        Assert.Equal(1, Of(row[0], row[1], row[2]).CarbonDioxide.InMilligramsPerLitre / row[3], 0.02));

    // The rule implies a pK1 of 6.281, which water of no temperature has: it is 15 % low at 25 °C, 21 % at 20 °C.
    [Fact]
    public void The_rule_of_thumb_is_not_used() => Assert.All(Rows(Gas), row =>
    {
        Assert.Equal(row[5], 3 * row[0] * Math.Pow(10, 7 - row[1]), 1e-3 * row[5]);
        Assert.InRange(Of(row[0], row[1], row[2]).CarbonDioxide.InMilligramsPerLitre / row[5], 1.13, 1.27);
    });

    // Agreement with another set of constants: 1.5 % from 10 to 30 °C.
    [Fact]
    public void A_published_table_of_factors_agrees() => Assert.All(Rows(Tucker), row =>
    {
        for (var i = 0; i < 5; i++)
        {
            var water = CarbonateWater.Of(Milligrams(100), PH(row[0]), Warm(10 + (5 * i))).Value;
            Assert.Equal(1, water.CarbonDioxide.InMilligramsPerLitre / 100 / row[i + 1], 0.0155);
        }
    });

    // Worked in the same reprint: 25 °C, pH 6.8, 50 mg/L CaCO₃ gives 15.65 mg/L.
    [Fact]
    public void The_worked_example_agrees() => Assert.Equal(
        15.65, CarbonateWater.Of(Milligrams(50), PH(6.8), Warm(25)).Value.CarbonDioxide.InMilligramsPerLitre, 0.03);

    // Skougstad et al. 1979, USGS TWRI 5-A1, p. 280, as quoted: CO₂ = 1.60 · 10^(6 − pH) · HCO₃ in mg/L.
    [Theory]
    [InlineData(6.5)]
    [InlineData(7)]
    [InlineData(7.5)]
    public void The_survey_s_own_formula_agrees_within_two_percent(double pH)
    {
        var bicarbonate = 100 / 50.04345 * 61.0168;
        var survey = 1.60 * Math.Pow(10, 6 - pH) * bicarbonate;
        var ours = CarbonateWater.Of(Milligrams(100), PH(pH), Warm(25)).Value.CarbonDioxide.InMilligramsPerLitre;
        Assert.Equal(1, ours / survey, 0.02);
    }

    [Fact]
    public void In_the_air_pH_rises_to_what_other_code_finds() => Assert.All(Rows(Aired), row =>
    {
        Assert.Equal(row[1], CarbonateWater.Aired(KH(row[0]), Warm(20)).Value.PH.InPH, 1e-4);
        Assert.Equal(row[2], CarbonateWater.Aired(KH(row[0]), Warm(25)).Value.PH.InPH, 1e-4);
        Assert.Equal(
            0.6898, CarbonateWater.Aired(KH(row[0]), Warm(20)).Value.CarbonDioxide.InMilligramsPerLitre, 1e-4);
        Assert.Equal(
            0.5993, CarbonateWater.Aired(KH(row[0]), Warm(25)).Value.CarbonDioxide.InMilligramsPerLitre, 1e-4);
    });

    [Fact]
    public void Mixing_never_averages_pH()
    {
        var (soft, hard) = (Of(1, 6.2, 25), Of(12, 7.9, 25));
        var mixed = CarbonateWater.Mix(soft, 1, hard, 1).Value;
        Assert.Equal(6.5, mixed.Alkalinity.InGermanDegrees, 9);
        Assert.Equal((soft.TotalCarbon + hard.TotalCarbon) / 2, mixed.TotalCarbon, 1e-12);
        Assert.True(Math.Abs(mixed.PH.InPH - 7.05) > 0.1, $"{mixed.PH}");
    }

    // By hand: mixed in equal parts, 25 °C. HCO₃ and CO₂ are both kept nearly as they are, so pH = pK1 +
    // log(HCO₃ ÷ CO₂) with both halved sums: 6.351864 + log10((1 + 12) × 0.356650 ÷ ((22.27 + 5.34) ÷ 44.0095)).
    [Fact]
    public void Mixing_agrees_with_the_sum_by_hand()
    {
        var (soft, hard) = (Of(1, 6.2, 25), Of(12, 7.9, 25));
        var gas = soft.CarbonDioxide.InMilligramsPerLitre + hard.CarbonDioxide.InMilligramsPerLitre;
        var byHand = 6.351864 + Math.Log10(13 * 0.356650 / (gas / 44.0095));
        Assert.Equal(byHand, CarbonateWater.Mix(soft, 1, hard, 1).Value.PH.InPH, 0.02);
    }

    [Fact]
    public void A_water_of_high_pH_and_no_alkalinity_does_not_exist()
    {
        var refusal = CarbonateWater.Of(KH(0), PH(9), Warm(25)).Refusal!;
        Assert.Equal(RefusalReason.NoSuchWater, refusal.Reason);
        Assert.Equal(0.5, refusal.Low!.Value, 0.01); // 10⁻⁵ mol of OH⁻ in a litre, as CaCO₃
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(-1, 2)]
    [InlineData(double.NaN, 1)]
    [InlineData(double.PositiveInfinity, 1)]
    public void Nothing_mixed_is_refused(double one, double other) => Assert.Equal(
        RefusalReason.NothingHappens, CarbonateWater.Mix(Of(1, 6.2, 25), one, Of(12, 7.9, 25), other).Refusal?.Reason);

    private static CarbonateWater Of(double degrees, double pH, double celsius) =>
        CarbonateWater.Of(KH(degrees), PH(pH), Warm(celsius)).Value;

    private static CarbonateHardness Milligrams(double figure) => CarbonateHardness.FromMilligramsPerLitre(figure);
}
