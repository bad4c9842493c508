using CareSheets.Water;
using static CareSheets.Tests.Water.Printed;

namespace CareSheets.Tests.Water;

/// <summary>US EPA 2013, EPA 822-R-13-001.</summary>
public sealed class AmmoniaCriteriaTests
{
    // Formulas from memory, computed by other code: pH, then acute / chronic at 15, 20, 25 and 30 °C.
    private const string Criteria = """
        6.5 34.319 / 2.938 | 22.674 / 2.129 | 14.981 / 1.542 | 9.898 / 1.117
        7   25.368 / 2.605 | 16.760 / 1.887 | 11.073 / 1.367 | 7.316 / 0.990
        7.5 13.980 / 1.924 | 9.236 / 1.393 | 6.102 / 1.009 | 4.032 / 0.731
        8   5.909 / 1.073 | 3.904 / 0.777 | 2.580 / 0.563 | 1.704 / 0.408
        8.5 2.252 / 0.480 | 1.488 / 0.348 | 0.983 / 0.252 | 0.649 / 0.183
        9   0.931 / 0.214 | 0.615 / 0.155 | 0.406 / 0.112 | 0.268 / 0.081
        """;

    [Fact]
    public void The_criteria_agree_with_other_code() => Assert.All(Rows(Criteria), row =>
    {
        for (var i = 0; i < 4; i++)
        {
            var warmth = Warm(15 + (5 * i));
            var acute = AmmoniaCriteria.Acute(PH(row[0]), warmth).Value;
            var chronic = AmmoniaCriteria.Chronic(PH(row[0]), warmth).Value;
            Assert.Equal(row[1 + (2 * i)], acute.InMilligramsOfNitrogen, 6e-4);
            Assert.Equal(row[2 + (2 * i)], chronic.InMilligramsOfNitrogen, 6e-4);
        }
    });

    // Fed. Reg. 78:52192 (22 August 2013): 17 and 1.9 mg TAN/L at pH 7 and 20 °C.
    [Fact]
    public void The_published_pair_is_met()
    {
        Assert.Equal(17, Math.Round(AmmoniaCriteria.Acute(PH(7), Warm(20)).Value.InMilligramsOfNitrogen));
        Assert.Equal(1.9, Math.Round(AmmoniaCriteria.Chronic(PH(7), Warm(20)).Value.InMilligramsOfNitrogen, 1));
    }

    // The salmonid arm 0.275 / 39.0 of pH 7.204 as quoted in a South Dakota rule from US EPA 1999: in cool water it
    // is the smaller, in warm water the other.
    [Fact]
    public void Salmonids_lower_the_acute_criterion_in_cool_water()
    {
        var arm = (0.275 / (1 + Math.Pow(10, 0.204))) + (39.0 / (1 + Math.Pow(10, -0.204)));
        var cool = AmmoniaCriteria.Acute(PH(7), Warm(8), withSalmonids: true).Value;
        Assert.Equal(arm, cool.InMilligramsOfNitrogen, 1e-9);
        Assert.True(AmmoniaCriteria.Acute(PH(7), Warm(8)).Value.InMilligramsOfNitrogen > arm);
        Assert.Equal(
            AmmoniaCriteria.Acute(PH(7), Warm(25)).Value, AmmoniaCriteria.Acute(PH(7), Warm(25), true).Value);
    }

    [Theory]
    [InlineData(6.4, 20)]
    [InlineData(9.1, 20)]
    [InlineData(7, 30.1)]
    [InlineData(7, -0.1)]
    public void Beyond_the_tables_there_is_no_criterion(double pH, double celsius)
    {
        Assert.Equal(RefusalReason.OutsideFormula, AmmoniaCriteria.Acute(PH(pH), Warm(celsius)).Refusal?.Reason);
        Assert.Equal(RefusalReason.OutsideFormula, AmmoniaCriteria.Chronic(PH(pH), Warm(celsius)).Refusal?.Reason);
    }
}
