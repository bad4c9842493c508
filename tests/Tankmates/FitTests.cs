using CareSheets.Quantities;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;
using CsCheck;

namespace CareSheets.Tests.Tankmates;

/// <summary>Who fits, where the sheet or the customer is silent: nobody is told a yes that nobody knows.</summary>
public sealed class FitTests
{
    private static readonly TankSize Roomy = Box(200, 80, 80);

    [Theory]
    [InlineData(7, 17, Fit.NotKnown)] // needs salt, and nobody has said that there is any
    [InlineData(0.6, 3, Fit.NotKnown)]
    [InlineData(0, 10, Fit.Fits)] // bears it
    [InlineData(0, 0.5, Fit.Fits)]
    public void A_fish_that_needs_salt_fits_only_where_salt_was_asked_for(double low, double high, Fit expected) =>
        Assert.Equal(expected, InTank(Salted(Stretch.Between(low, high))));

    [Fact]
    public void A_fish_of_which_nobody_knows_whether_it_needs_salt_fits_no_tank()
    {
        var mate = Salted(null);
        Assert.Equal(Fit.NotKnown, InTank(mate));
        Assert.Equal(Fit.NotKnown, InWater(mate, "salinity", 0));
        Assert.Equal(Fit.NotKnown, InWater(mate, "salinity", 10));
    }

    [Theory]
    [InlineData(0, Fit.DoesNotFit)]
    [InlineData(6.9, Fit.DoesNotFit)]
    [InlineData(10, Fit.Fits)]
    public void Salt_that_was_said_is_judged(double grams, Fit expected) =>
        Assert.Equal(expected, InWater(Salted(Stretch.Between(7, 17)), "salinity", grams));

    [Fact]
    public void A_fish_of_fresh_water_does_not_fit_a_brackish_one() =>
        Assert.Equal(Fit.DoesNotFit, InWater(Salted(Stretch.Between(0, 0.5)), "salinity", 5));

    [Theory]
    [InlineData(6.0, Fit.DoesNotFit)]
    [InlineData(6.09, Fit.DoesNotFit)] // a guess has no slip beyond it
    [InlineData(6.5, Fit.NotKnown)]
    [InlineData(7.3, Fit.DoesNotFit)]
    public void Relatives_speak_against_a_water_and_never_for_it(double pH, Fit expected) =>
        Assert.Equal(expected, InWater(Suggested(Stretch.Between(6.1, 7.2)), "ph", pH));

    [Fact]
    public void Whatever_relatives_suggest_nothing_fits_or_nearly_fits_by_it() =>
        Gen.Select(Gen.Double[4, 9], Gen.Double[0, 2], Gen.Double[3, 10]).Sample((low, width, pH) =>
        {
            var mate = Suggested(Stretch.Between(low, low + width));
            Assert.True(InWater(mate, "ph", pH) >= Fit.NotKnown);
            Assert.NotEqual(Verdict.Suits, Fish.Judge.Judge(mate, Fish.Plain("other")).Verdict);
        });

    [Theory]
    [InlineData(6, 7, ReasonKind.RelativesOnly, Verdict.WithCare)]
    [InlineData(7.6, 8, ReasonKind.RelativesApart, Verdict.KeepApart)] // the other is kept at 6 to 7.5
    public void Relatives_keep_a_pair_apart_or_leave_it_unknown(
        double low, double high, ReasonKind kind, Verdict weight)
    {
        var reason = Assert.Single(
            Fish.Judge.Judge(Suggested(Stretch.Between(low, high)), Fish.Plain("other")).Reasons);
        Assert.Equal((kind, weight, "ph"), (reason.Reason.Kind, reason.Reason.Weight, reason.Reason.Field));
    }

    [Fact]
    public void A_side_that_no_sheet_states_is_held_against_the_law_and_told_as_that()
    {
        var mate = Fish.Plain("one") with { Housing = Fish.Plain("one").Housing with { Width = null, Height = null } };
        Assert.Equal(Fit.Fits, InTank(mate));
        var volume = TankSize.OfVolume(Volume.FromLitres(500));
        Assert.DoesNotContain(TankFit.InTank(mate, volume), r => r.Limits.Field is "width" or "height");
        var large = mate with { Body = mate.Body with { Length = Stretch.Between(20, 25) } };
        var reason = Assert.Single(TankFit.InTank(large, Box(200, 40, 80)));
        Assert.Equal(
            ("width", LimitBasis.Law, Fit.DoesNotFit), (reason.Limits.Field, reason.Limits.Basis, reason.Weight));
        Assert.Equal(50, reason.Limits.Fits!.Value.Low); // twice the length: Swiss ordinance, Annex 2, Table 8
    }

    private static Fit InTank(Tankmate mate) => TankFit.Worst(TankFit.InTank(mate, Roomy));

    private static Fit InWater(Tankmate mate, string field, double figure) => TankFit.Worst(TankFit.InWater(
        mate, [.. Fish.Ranges, Fish.Salinity], new Dictionary<string, double> { [field] = figure }));

    private static Tankmate Salted(Stretch? keep) => Fish.Plain("one") with
    {
        Water = [.. Fish.Plain("one").Water, new WaterNeed(Fish.Salinity, keep, null)],
    };

    private static Tankmate Suggested(Stretch pH) => Fish.Plain("one") with
    {
        Water =
        [
            .. Fish.Plain("one").Water.Where(w => w.Declaration != Fish.Acidity),
            new WaterNeed(Fish.Acidity, null, null) { Suggested = pH },
        ],
    };

    private static TankSize Box(double length, double width, double height) => TankSize.OfBox(
        Length.FromCentimetres(length), Length.FromCentimetres(width), Length.FromCentimetres(height));
}
