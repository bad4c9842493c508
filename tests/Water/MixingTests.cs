using CareSheets.Quantities;
using CareSheets.Water;
using static CareSheets.Tests.Water.Printed;

namespace CareSheets.Tests.Water;

/// <summary>Blends, water changes, dilution and floated bags.</summary>
public sealed class MixingTests
{
    // By hand: (target − pure) ÷ (tap − pure), in German degrees and, in the fifth row, mg/L.
    [Theory]
    [InlineData(15, 0, 5, 1.0 / 3)]
    [InlineData(15, 0.5, 5, 4.5 / 14.5)]
    [InlineData(20, 0, 3, 0.15)]
    [InlineData(12, 1, 6, 5.0 / 11)]
    [InlineData(250, 10, 80, 70.0 / 240)]
    [InlineData(8, 0, 8, 1)]
    public void A_blend_meets_its_target(double tap, double pure, double target, double share)
    {
        var blend = Blend.For(Hard(tap), Hard(pure), Hard(target)).Value;
        Assert.Equal(share, blend.OfFirst.InParts, 1e-9);
        Assert.False(blend.IsAny);
        Assert.Equal(target, Blend.Of(Hard(tap), Hard(pure), blend.OfFirst).Value.InGermanDegrees, 1e-9);
    }

    [Theory]
    [InlineData(5, 0, 8, RefusalReason.BetweenNoWaters)]
    [InlineData(5, 2, 1, RefusalReason.BetweenNoWaters)]
    [InlineData(5, 5, 6, RefusalReason.SameWaters)]
    public void A_target_between_no_two_waters_is_refused(double one, double other, double target, RefusalReason why)
    {
        var refusal = Blend.For(Hard(one), Hard(other), Hard(target)).Refusal!;
        Assert.Equal(why, refusal.Reason);
        Assert.Equal(Hard(Math.Max(one, other)).Canonical, refusal.High);
        Assert.Equal(Hard(Math.Min(one, other)).Canonical, refusal.Low);
    }

    [Fact]
    public void Of_two_waters_that_have_the_target_any_share_does() =>
        Assert.True(Blend.For(Hard(5), Hard(5), Hard(5)).Value.IsAny);

    [Fact]
    public void pH_is_never_blended()
    {
        Assert.Equal(RefusalReason.AcidityDoesNotBlend, Blend.For(PH(6), PH(8), PH(7)).Refusal?.Reason);
        Assert.Equal(
            RefusalReason.AcidityDoesNotBlend, Blend.Of(PH(6), PH(8), Share.FromPercent(50)).Refusal?.Reason);
        Assert.Equal(
            RefusalReason.AcidityDoesNotBlend,
            WaterChange.After(PH(6), PH(8), Share.FromPercent(50), 2).Refusal?.Reason);
        Assert.Equal(
            RefusalReason.AcidityDoesNotBlend,
            WaterChange.Until(PH(6), PH(8), Share.FromPercent(50), PH(7)).Refusal?.Reason);
    }

    // By hand: 10 + 30 × 0.75⁴ = 19.4921875.
    [Fact]
    public void Four_quarters_leave_less_than_a_third_of_the_difference() => Assert.Equal(
        19.4921875,
        WaterChange.After(Nitrate(40), Nitrate(10), Share.FromPercent(25), 4).Value.InMilligramsPerLitre, 1e-12);

    // By hand: 0.75³ = 0.421875, so after the third change the difference is below half; 0.75⁴ = 0.3164.
    [Theory]
    [InlineData(25, 3)]
    [InlineData(22.65625, 3)]
    [InlineData(22.6562, 4)]
    [InlineData(19.4921875, 4)]
    [InlineData(39, 1)]
    [InlineData(40, 0)]
    public void The_fewest_changes_are_told(double target, int times) => Assert.Equal(
        times, WaterChange.Until(Nitrate(40), Nitrate(10), Share.FromPercent(25), Nitrate(target)).Value);

    [Theory]
    [InlineData(40, 10, 25, 10)] // never quite
    [InlineData(40, 10, 25, 5)]
    [InlineData(40, 10, 25, 41)]
    [InlineData(40, 10, 0, 20)]
    [InlineData(40, 40, 25, 20)]
    public void What_changes_never_bring_is_refused(double tank, double fresh, double share, double target) =>
        Assert.Equal(
            RefusalReason.NeverReached,
            WaterChange.Until(Nitrate(tank), Nitrate(fresh), Share.FromPercent(share), Nitrate(target))
                .Refusal?.Reason);

    // By hand: 1 ÷ (1 + r) and e^(−r).
    [Theory]
    [InlineData(1, 0.50, 0.37)]
    [InlineData(3, 0.25, 0.05)]
    public void Pouring_leaves_more_than_dripping(double volumes, double poured, double dripped)
    {
        Assert.Equal(poured, Dilution.LeftAfterPouring(volumes), 0.005);
        Assert.Equal(dripped, Dilution.LeftAfterOverflow(volumes), 0.005);
    }

    // Lim, Dhert and Sorgeloos 2003: 4 to 5 °C fall below 2 °C in about 30 minutes; τ from that is 33 to 43 minutes.
    [Fact]
    public void A_floated_bag_follows_the_published_half_hour()
    {
        var tau = WaterLimits.Default.FloatTime.Value;
        foreach (var apart in new[] { 4.0, 5.0 })
        {
            var left = FloatedBag.After(Warm(25 - apart), Warm(25), Elapsed.FromMinutes(30), tau);
            Assert.InRange(25 - left.InCelsius, 1.7, 2.3);
            var needed = FloatedBag.Until(
                Warm(25 - apart), Warm(25), TemperatureDifference.FromKelvins(2), tau).Value;
            Assert.InRange(needed.InMinutes, 25, 35);
        }
    }

    [Fact]
    public void Two_readings_give_the_time_of_a_bag()
    {
        var tau = FloatedBag.TimeConstant(Warm(20), Warm(23), Warm(25), Elapsed.FromMinutes(30)).Value;
        Assert.Equal(30 / Math.Log(2.5), tau.InMinutes, 1e-9);
        Assert.Equal(23, FloatedBag.After(Warm(20), Warm(25), Elapsed.FromMinutes(30), tau).InCelsius, 1e-9);
    }

    [Theory]
    [InlineData(20, 19, 25)]
    [InlineData(20, 20, 25)]
    [InlineData(20, 26, 25)]
    [InlineData(25, 25, 25)]
    public void Readings_that_do_not_come_nearer_are_refused(double first, double later, double tank) => Assert.Equal(
        RefusalReason.NotApproaching,
        FloatedBag.TimeConstant(Warm(first), Warm(later), Warm(tank), Elapsed.FromMinutes(30)).Refusal?.Reason);

    [Fact]
    public void A_bag_that_is_near_enough_needs_no_time() => Assert.Equal(
        default,
        FloatedBag.Until(Warm(24), Warm(25), TemperatureDifference.FromKelvins(2), Elapsed.FromMinutes(37)).Value);

    private static GeneralHardness Hard(double degrees) => GeneralHardness.FromGermanDegrees(degrees);

    private static Concentration Nitrate(double milligrams) => Concentration.FromMilligramsPerLitre(milligrams);
}
