using CareSheets.Quantities;
using CareSheets.Water;
using static CareSheets.Tests.Water.Printed;

namespace CareSheets.Tests.Water;

/// <summary>Emerson et al. 1975, against printed tables and an independent solver.</summary>
public sealed class UnionisedAmmoniaTests
{
    // UF/IFAS fact sheet FA16, table of multipliers, as reprinted (pH 7); pH 8 and 9 from memory. The sheet names
    // Emerson et al. 1975. 10 and 24 °C at pH 7 are truncated there instead of rounded.
    private const string Multipliers = """
        6  0.0013 .0133 .1190
        8  0.0016 .0156 .1368
        10 0.0018 .0182 .1565
        12 0.0022 .0212 .1782
        14 0.0025 .0247 .2018
        16 0.0029 .0286 .2273
        18 0.0034 .0330 .2546
        20 0.0039 .0381 .2836
        22 0.0046 .0438 .3140
        24 0.0052 .0502 .3456
        26 0.0060 .0574 .3783
        28 0.0069 .0654 .4116
        30 0.0080 .0743 .4453
        """;

    // Computed from the formula by other code, in percent: °C, pKa, pH 6, 6.5, 7, 7.5, 8, 8.5, 9.
    private const string Percent = """
        0  10.08440 0.0082 0.0260 0.0823 0.2597 0.8167 2.5377 7.6075
        10 9.73143 0.0186 0.0587 0.1853 0.5835 1.8221 5.5437 15.6543
        15 9.56413 0.0273 0.0862 0.2721 0.8553 2.6557 7.9420 21.4339
        20 9.40255 0.0396 0.1250 0.3942 1.2361 3.8071 11.1235 28.3555
        22 9.33944 0.0457 0.1445 0.4556 1.4266 4.3764 12.6431 31.3976
        24 9.27719 0.0528 0.1668 0.5254 1.6429 5.0171 14.3128 34.5641
        25 9.24638 0.0567 0.1790 0.5639 1.7616 5.3662 15.2052 36.1859
        26 9.21577 0.0608 0.1920 0.6048 1.8878 5.7356 16.1363 37.8287
        28 9.15516 0.0699 0.2207 0.6947 2.1644 6.5384 18.1151 41.1618
        30 9.09536 0.0802 0.2532 0.7965 2.4760 7.4319 20.2480 44.5326
        """;

    // Computed by other code: the most total ammonia with no more than 0.02 mg/L un-ionised on the same basis.
    private const string Largest = """
        20 50.5531 16.0000 5.0733 1.6180 0.5253 0.1798 0.0705
        24 37.8834 11.9935 3.8063 1.2173 0.3986 0.1397 0.0579
        25 35.2901 11.1734 3.5470 1.1353 0.3727 0.1315 0.0553
        26 32.8900 10.4144 3.3070 1.0594 0.3487 0.1239 0.0529
        28 28.6087 9.0605 2.8789 0.9241 0.3059 0.1104 0.0486
        30 24.9309 7.8975 2.5111 0.8078 0.2691 0.0988 0.0449
        """;

    [Fact]
    public void Shares_are_those_of_the_printed_multipliers() => Assert.All(Rows(Multipliers), row =>
        Assert.All([7.0, 8.0, 9.0], pH => Assert.Equal(row[(int)pH - 6], Share(pH, row[0]), 1.0e-4)));

    // The 32 °C column of that table does not follow the formula that the sheet names: .0093 .0877 .4902.
    [Theory]
    [InlineData(7, 0.00911, 0.0093)]
    [InlineData(8, 0.08423, 0.0877)]
    [InlineData(9, 0.47909, 0.4902)]
    public void The_column_for_32_degrees_is_not_followed(double pH, double formula, double printed)
    {
        Assert.Equal(formula, Share(pH, 32), 5e-6);
        Assert.True(Math.Abs(Share(pH, 32) - printed) > 1.5e-4);
    }

    [Fact]
    public void Shares_agree_with_other_code_to_the_last_digit() => Assert.All(Rows(Percent), row =>
    {
        Assert.Equal(row[1], UnionisedAmmonia.PKa(Warm(row[0])).Value, 5.1e-6);
        for (var i = 0; i < 7; i++)
            Assert.Equal(row[i + 2], 100 * Share(6 + (i * 0.5), row[0]), 1e-4);
    });

    // aqion.de, site/109, a thermodynamic solver with constants of its own: 0.030 mM at 15 °C.
    [Theory]
    [InlineData(8.5, 0.00238 / 0.030)]
    [InlineData(9.0, 0.00643 / 0.030)]
    public void An_independent_solver_agrees(double pH, double share) => Assert.Equal(share, Share(pH, 15), 2.5e-4);

    // UF/IFAS worked example: 0.0502 at pH 8 and 24 °C. The misprint 2727.92 would give 0.0509.
    [Fact]
    public void The_misprinted_constant_is_not_used()
    {
        Assert.Equal(0.0502, Share(8, 24), 5e-5);
        Assert.Equal(2729.92, UnionisedAmmonia.Slope);
        var misprint = 1 / (Math.Pow(10, 0.09018 + (2727.92 / 297.15) - 8) + 1);
        Assert.Equal(0.05092, misprint, 5e-6);
    }

    // Trussell 1972, in two instrument makers' manuals, is another table: within 2 %.
    [Theory]
    [InlineData(8.5, 20, 11.18)]
    [InlineData(8.5, 25, 14.97)]
    [InlineData(8.0, 25, 5.28)]
    public void An_older_table_agrees_within_two_percent(double pH, double celsius, double percent) =>
        Assert.Equal(1, 100 * Share(pH, celsius) / percent, 0.02);

    [Fact]
    public void The_largest_total_agrees_with_other_code() => Assert.All(Rows(Largest), row =>
    {
        for (var i = 0; i < 7; i++)
        {
            var largest = UnionisedAmmonia.LargestTotal(AsN(0.02), PH(6 + (i * 0.5)), Warm(row[0]));
            Assert.Equal(row[i + 1], largest.Value.InMilligramsOfNitrogen, 5.1e-5);
        }
    });

    // NH₃ weighs 17.0305 where its nitrogen weighs 14.0067: 0.02 mg/L NH₃ is 0.01645 mg/L as N.
    [Fact]
    public void A_limit_keeps_its_basis()
    {
        var limit = Ammonia.FromMilligramsOfAmmonia(0.02);
        Assert.Equal(0.01645, limit.InMilligramsOfNitrogen, 5e-6);
        Assert.Equal(1.21588, AsN(1).InMilligramsOfAmmonia, 5e-6);
        Assert.Equal(limit, WaterLimits.Default.UnionisedAmmonia.Value);
        var perN = UnionisedAmmonia.LargestTotal(AsN(0.02), PH(8), Warm(25)).Value;
        var perNH3 = UnionisedAmmonia.LargestTotal(limit, PH(8), Warm(25)).Value;
        Assert.Equal(perN.InMilligramsOfNitrogen, perNH3.InMilligramsOfAmmonia, 1e-12);
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(50.01)]
    public void Beyond_its_range_the_formula_is_refused_with_the_range(double celsius)
    {
        var refused = UnionisedAmmonia.ShareAt(PH(7), Warm(celsius)).Refusal;
        Assert.Equal(
            new Refusal(
                RefusalReason.OutsideFormula, DimensionCatalogue.Temperature, celsius, 0, 50, UnionisedAmmonia.Formula),
            refused);
    }

    private static double Share(double pH, double celsius) =>
        UnionisedAmmonia.ShareAt(PH(pH), Warm(celsius)).Value.InParts;
}
