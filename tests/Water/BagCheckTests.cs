using CareSheets.Quantities;
using CareSheets.Water;
using CareSheets.Water.Bags;
using static CareSheets.Tests.Water.Printed;

namespace CareSheets.Tests.Water;

/// <summary>The transport bag: worked numbers, and what follows from what was not measured.</summary>
public sealed class BagCheckTests
{
    // Computed by other code from Emerson et al. 1975: mg/L as N, pH in the bag, pH after, °C, un-ionised before
    // and after, and their ratio.
    private const string Worked = """
        2  6.5 7.5 25 0.00358 0.03523 9.841
        5  6.6 8.0 24 0.01049 0.25086 23.909
        10 6.2 7.8 25 0.00898 0.34543 38.470
        """;

    // The same for 8 mg/L as N at 25 °C, by pH.
    private const string OneBag = """
        6.2 0.007
        6.6 0.018
        7.0 0.045
        7.4 0.112
        7.8 0.276
        8.2 0.660
        """;

    private static readonly ReceivingWater Hard = new("Hard water")
    {
        Temperature = Warm(25),
        PH = PH(7.9),
        Alkalinity = KH(12),
    };

    /// <summary>Nearer to the bag in pH, yet far enough to turn its ammonia.</summary>
    private static readonly ReceivingWater Middle = Hard with { PH = PH(7.1) };

    private static readonly BagReading Far = new(Warm(22))
    {
        PH = PH(6.2),
        Ammonia = AsN(8),
        Alkalinity = KH(3),
        UnderWay = Elapsed.FromHours(26),
    };

    private static readonly BagReading Near = Far with
    {
        PH = PH(7.7),
        Ammonia = AsN(0.05),
        UnderWay = Elapsed.FromHours(2),
        Temperature = Warm(24),
    };

    [Fact]
    public void The_worked_bags_agree() => Assert.All(Rows(Worked), row =>
    {
        var before = In(row[0], row[1], row[3]);
        var after = In(row[0], row[2], row[3]);
        Assert.Equal(row[4], before, 5e-6);
        Assert.Equal(row[5], after, 5e-6);
        Assert.Equal(row[6], after / before, 1e-3);
        Assert.True(before < 0.02 && after > 0.02);
    });

    [Fact]
    public void One_bag_goes_from_harmless_to_harmful_by_its_pH() => Assert.All(Rows(OneBag), row =>
        Assert.Equal(row[1], In(8, row[0], 25), 6e-4));

    // Worked by other code for partly and fully aired water at 25 °C (mg/L CaCO₃, bag pH 6.2): CO₂ in
    // the bag, pH at 3 mg/L of CO₂, pH at 0.6 mg/L. The table ignores carbonate, which tells above pH 8.3.
    [Theory]
    [InlineData(20, 25, 7.1, 7.8)]
    [InlineData(50, 62, 7.5, 8.2)]
    [InlineData(100, 125, 7.8, 8.5)]
    [InlineData(200, 250, 8.1, 8.8)]
    public void CO2_leaves_and_pH_rises(double alkalinity, double gas, double partly, double fully)
    {
        var alk = CarbonateHardness.FromMilligramsPerLitre(alkalinity);
        double At(double milligrams) =>
            CarbonateWater.WithGas(alk, Concentration.FromMilligramsPerLitre(milligrams), Warm(25)).Value.PH.InPH;
        var closed = CarbonateWater.Of(alk, PH(6.2), Warm(25)).Value;
        Assert.Equal(gas, closed.CarbonDioxide.InMilligramsPerLitre, 0.02 * gas);
        Assert.Equal(partly, At(3), 0.06);
        Assert.Equal(fully, At(0.6), alkalinity > 150 ? 0.12 : 0.06);
        Assert.Equal(6.2, At(closed.CarbonDioxide.InMilligramsPerLitre), 1e-6);
    }

    [Fact]
    public void A_long_bag_is_emptied_at_once()
    {
        var outcome = Judge(Far, Middle);
        Assert.Equal((BagAdvice.AtOnce, BagReason.WouldHarm), (outcome.Advice, outcome.Reason));
        Assert.DoesNotContain(BagCaution.AcidityApart, outcome.Cautions);
    }

    [Fact]
    public void A_long_bag_for_a_hard_tank_is_received_apart_for_its_step_of_pH()
    {
        var outcome = Judge(Far, Hard);
        Assert.Equal((BagAdvice.ReceiveApart, BagReason.AcidityApart), (outcome.Advice, outcome.Reason));
        Assert.True(outcome.Now!.Value.IsSingle && outcome.Aired!.Value.IsSingle && outcome.AiredPH.IsSingle);
        Assert.True(outcome.Now.Value.Max < WaterLimits.Default.UnionisedAmmonia.Value);
        Assert.True(outcome.Aired!.Value.Min > WaterLimits.Default.HarmfulAmmonia.Value);
        Assert.Equal(50.1, outcome.HydrogenRatio!.Value, 0.05); // 10^1.7
        Assert.Contains(BagCaution.AcidityApart, outcome.Cautions);
        Assert.Contains(BagCaution.WarmthApart, outcome.Cautions);
        Assert.DoesNotContain(BagCaution.NotMeasured, outcome.Cautions);
        Assert.DoesNotContain(BagCaution.HarmsNow, outcome.Cautions);
        Assert.Equal(37 * Math.Log(1.5), outcome.Afloat!.Value.InMinutes, 1e-9);
    }

    [Fact]
    public void A_short_bag_with_little_ammonia_may_be_mixed()
    {
        var outcome = Judge(Near, Hard);
        Assert.Equal((BagAdvice.MayMix, BagReason.StaysLow), (outcome.Advice, outcome.Reason));
        Assert.Equal([BagCaution.NoAirstone, BagCaution.SourcesDisagree], outcome.Cautions);
    }

    [Theory]
    [InlineData(26, 7.7, BagReason.LongUnderWay)]
    [InlineData(2, 7.5, BagReason.Rises)]
    public void Time_and_pH_each_speak_against_slow_mixing(double hours, double pH, BagReason reason)
    {
        var bag = Far with { PH = PH(pH), Ammonia = AsN(0.05), UnderWay = Elapsed.FromHours(hours) };
        var outcome = Judge(bag, Hard);
        Assert.Equal((BagAdvice.Briefly, reason), (outcome.Advice, outcome.Reason));
    }

    [Fact]
    public void Unknown_ammonia_is_taken_for_the_worst_and_a_kit_can_be_held_against_a_figure()
    {
        var outcome = Judge(Far with { Ammonia = null }, Middle);
        Assert.Equal((BagAdvice.AtOnce, BagReason.AmmoniaUnknown), (outcome.Advice, outcome.Reason));
        Assert.Null(outcome.Now);
        Assert.Null(outcome.Aired);
        Assert.Null(outcome.Worst);
        Assert.Contains(BagCaution.NotMeasured, outcome.Cautions);
        var held = Judge(Far with { Ammonia = outcome.LargestTotal }, Middle);
        Assert.Equal(
            WaterLimits.Default.UnionisedAmmonia.Value.InMilligramsOfNitrogen,
            held.Aired!.Value.Max!.Value.InMilligramsOfNitrogen, 1e-12);
    }

    [Fact]
    public void An_unmeasured_alkalinity_makes_a_span_that_holds_every_measured_one()
    {
        var span = Judge(Far with { Alkalinity = null }, Hard);
        Assert.False(span.AiredPH.IsSingle);
        foreach (var degrees in new[] { 0.5, 1, 2.7, 5, 9.3, 16 })
        {
            var one = Judge(Far with { Alkalinity = KH(degrees) }, Hard);
            Assert.True(span.AiredPH.Contains(one.AiredPH));
            Assert.True(span.Aired!.Value.Contains(one.Aired!.Value));
            Assert.All(span.Steps.Zip(one.Steps), pair =>
            {
                var slack = Ammonia.FromMilligramsOfNitrogen(1e-3);
                Assert.True(pair.First.Unionised!.Value.Max + slack >= pair.Second.Unionised!.Value.Max);
                Assert.True(pair.First.Unionised.Value.Min <= pair.Second.Unionised.Value.Min + slack);
            });
        }
    }

    [Fact]
    public void A_tank_of_unknown_pH_has_no_steps_and_is_not_called_harmless()
    {
        var bag = Far with { Ammonia = AsN(0.01), UnderWay = Elapsed.FromHours(1) };
        var outcome = Judge(bag, new ReceivingWater("") { Temperature = Warm(25) });
        Assert.Empty(outcome.Steps);
        Assert.Null(outcome.Rise);
        Assert.Equal((BagAdvice.Briefly, BagReason.TankUnknown), (outcome.Advice, outcome.Reason));
    }

    [Fact]
    public void A_bag_that_harms_while_closed_is_told()
    {
        var outcome = Judge(Far with { PH = PH(8), Ammonia = AsN(4), Temperature = Warm(25) }, Hard);
        Assert.Contains(BagCaution.HarmsNow, outcome.Cautions);
    }

    [Theory]
    [InlineData(25.0, BagAdvice.AtOnce, BagReason.WouldHarm)] // as warm as the tank
    [InlineData(20.0, BagAdvice.ReceiveApart, BagReason.HarmsAfloat)]
    [InlineData(null, BagAdvice.ReceiveApart, BagReason.HarmsAfloat)] // nobody knows, so it is not said to be
    public void Nobody_floats_a_bag_that_harms_while_closed(double? tank, BagAdvice advice, BagReason reason)
    {
        var outcome = Judge(
            Far with { PH = PH(8), Ammonia = AsN(4), Temperature = Warm(25) },
            Hard with { Temperature = tank is { } celsius ? Warm(celsius) : null });
        Assert.Equal((advice, reason), (outcome.Advice, outcome.Reason));
    }

    [Theory]
    [InlineData(6.2, 7.2, BagAdvice.AtOnce)] // a step of 1 is not more than 1, whatever a computer makes of it
    [InlineData(6.2, 7.25, BagAdvice.ReceiveApart)]
    [InlineData(8.5, 7.5, BagAdvice.AtOnce)]
    [InlineData(8.5, 6.5, BagAdvice.ReceiveApart)]
    public void A_step_of_pH_beyond_the_limit_up_or_down_is_taken_apart(double bag, double tank, BagAdvice advice) =>
        Assert.Equal(advice, Judge(
            Far with { PH = PH(bag), Ammonia = null, Temperature = Warm(25) }, Hard with { PH = PH(tank) }).Advice);

    [Fact]
    public void Mixing_dilutes_and_ends_at_the_tank()
    {
        var outcome = Judge(Far, Hard);
        Assert.Equal([0.25, 0.5, 1, 2, 4], outcome.Steps.Select(s => s.Volumes));
        var tankInAir = CarbonateWater.Aired(KH(12), Warm(25)).Value.PH;
        Assert.All(outcome.Steps, s => Assert.True(
            s.PH.Min > Far.PH && s.PH.Max > outcome.AiredPH.Max && s.PH.Max < tankInAir));
        var last = outcome.Steps[^1];
        Assert.True(last.Unionised!.Value.Max < outcome.Steps[0].Unionised!.Value.Max);
    }

    [Fact]
    public void The_shop_s_own_limits_decide()
    {
        var strict = WaterLimits.Default with
        {
            UnionisedAmmonia = new(AsN(0.0001), "a test"),
            HarmfulAmmonia = new(AsN(0.0002), "a test"),
        };
        Assert.Equal(BagReason.WouldHarm, BagCheck.Judge(Near, Hard, strict).Value.Reason);
    }

    [Fact]
    public void A_bag_beyond_the_formula_is_refused() => Assert.Equal(
        RefusalReason.OutsideFormula,
        BagCheck.Judge(Far with { Temperature = Warm(60) }, Hard, WaterLimits.Default).Refusal?.Reason);

    private static BagOutcome Judge(BagReading bag, ReceivingWater tank) =>
        BagCheck.Judge(bag, tank, WaterLimits.Default).Value;

    private static double In(double total, double pH, double celsius) =>
        UnionisedAmmonia.In(AsN(total), PH(pH), Warm(celsius)).Value.InMilligramsOfNitrogen;
}
