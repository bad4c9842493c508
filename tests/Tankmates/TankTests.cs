using CareSheets.Quantities;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;

namespace CareSheets.Tests.Tankmates;

/// <summary>Tanks: how they are read, what they weigh, what two laws count, who fits.</summary>
public sealed class TankTests
{
    [Theory]
    [InlineData("120x40x50cm", 120, 40, 50)]
    [InlineData("120 x 40 x 50 cm", 120, 40, 50)]
    [InlineData("120 cm × 40 cm × 50 cm", 120, 40, 50)]
    [InlineData("1200x400x500mm", 120, 40, 50)]
    [InlineData("48x16x20in", 121.92, 40.64, 50.8)]
    [InlineData("4 ft x 16 in x 20 in", 121.92, 40.64, 50.8)]
    public void Three_sides_are_read_in_any_unit(string text, double length, double width, double height)
    {
        var tank = TankText.Read(text).Tank;
        Assert.NotNull(tank);
        Assert.Equal(length, tank.Length!.Value.InCentimetres, 9);
        Assert.Equal(width, tank.Width!.Value.InCentimetres, 9);
        Assert.Equal(height, tank.Height!.Value.InCentimetres, 9);
        Assert.Equal(length * width * height / 1000, tank.Volume!.Value.InLitres, 9);
    }

    [Theory]
    [InlineData("240 L", 240)]
    [InlineData("240L", 240)]
    [InlineData("20 US gal", 75.70823568)] // 1 US gal = 3.785411784 L (NIST SP 811, Appendix B.8)
    public void A_volume_alone_is_read_and_its_sides_stay_unknown(string text, double litres)
    {
        var tank = TankText.Read(text).Tank;
        Assert.NotNull(tank);
        Assert.Equal(litres, tank.Volume!.Value.InLitres, 9);
        Assert.Null(tank.Length);
    }

    [Theory]
    [InlineData("120x40", TankProblem.NotThreeSides)]
    [InlineData("1x2x3x4cm", TankProblem.NotThreeSides)]
    [InlineData("120x40x50", TankProblem.NotALength)]
    [InlineData("axbxc cm", TankProblem.NotALength)]
    [InlineData("120x40x50L", TankProblem.NotALength)]
    [InlineData("-120x40x50cm", TankProblem.NotALength)]
    [InlineData("x x cm", TankProblem.NotALength)]
    [InlineData("", TankProblem.NotAVolume)]
    [InlineData("240", TankProblem.NotAVolume)]
    [InlineData("20 gallons", TankProblem.NotAVolume)]
    [InlineData("100–200 L", TankProblem.NotAVolume)]
    [InlineData("0x0x0cm", TankProblem.Impossible)]
    [InlineData("120x40x5cm", TankProblem.Impossible)]
    [InlineData("1e9 L", TankProblem.NotAVolume)]
    [InlineData("20000x40x50cm", TankProblem.Impossible)]
    [InlineData("0 L", TankProblem.Impossible)]
    public void What_is_no_tank_is_refused_with_its_reason(string text, TankProblem problem) =>
        Assert.Equal(new TankReading(null, problem), TankText.Read(text));

    /// <summary>
    /// Worked by hand from the parts, 92 % filled, glass at 2.5 kg/L and 5 cm of gravel at 1.6 kg/L:
    /// 60 × 30 × 30 cm of 6 mm holds 58.8 × 28.8 × 30 × 0.92 cm³ and has panes of 2 × 60 × 30,
    /// 2 × 28.8 × 30 and 60 × 30 cm; 120 × 40 × 50 cm of 10 mm likewise.
    /// </summary>
    [Theory]
    [InlineData(60, 30, 30, 46.738944, 10.692)]
    [InlineData(120, 40, 50, 206.264, 51.5)]
    public void A_filled_tank_weighs_the_sum_of_its_parts(
        double length, double width, double height, double litres, double glass)
    {
        var gravel = length * width * 5 / 1000;
        var expected = ((litres - (0.6 * gravel)) * 0.998) + glass + (1.6 * gravel);
        Assert.Equal(expected, FilledWeight.Estimate(Box(length, width, height))!.Value, 3);
    }

    [Fact]
    public void Nothing_is_said_of_the_weight_of_a_tank_without_sides_or_of_uncommon_height()
    {
        Assert.Null(FilledWeight.Estimate(TankSize.OfVolume(Volume.FromLitres(240))));
        Assert.Null(FilledWeight.Estimate(Box(120, 40, 80)));
    }

    /// <summary>
    /// Swiss Animal Protection Ordinance, Annex 2, Table 8: 10 fish of 3 cm 15 L; 8 of 6 cm 36 L; one
    /// of 25 cm 43.75 L (worked by hand); the classes at their ends.
    /// </summary>
    [Theory]
    [InlineData(10, 3, 15)]
    [InlineData(8, 6, 36)]
    [InlineData(1, 25, 43.75)]
    [InlineData(1, 5, 2.5)]
    [InlineData(1, 10, 7.5)]
    [InlineData(1, 15, 15)]
    [InlineData(1, 20, 25)]
    [InlineData(1, 30, 52.5)]
    [InlineData(1, 40, 90)]
    [InlineData(1, 50, 150)]
    public void The_Swiss_table_is_met(int count, double cm, double litres) =>
        Assert.Equal(litres, count * SwissSpace.Litres(cm), 9);

    [Fact]
    public void The_largest_Austrian_standard_tank_inside_a_tank_is_found()
    {
        Assert.Equal((100, 40, 50), AustrianTanks.Within(Box(110, 45, 50)));
        Assert.Null(AustrianTanks.Within(Box(50, 30, 30)));
        Assert.Null(AustrianTanks.Within(TankSize.OfVolume(Volume.FromLitres(500))));
    }

    [Fact]
    public void A_tank_fits_at_the_figure_nearly_a_tenth_below_and_not_beyond()
    {
        var fish = Fish.Plain("one");
        Assert.Equal(Fit.Fits, TankFit.Worst(TankFit.InTank(fish, Box(60, 30, 30))));
        Assert.Equal(Fit.Nearly, TankFit.Worst(TankFit.InTank(fish, Box(55, 30, 33))));
        Assert.Equal(Fit.DoesNotFit, TankFit.Worst(TankFit.InTank(fish, Box(53, 30, 40))));
    }

    [Fact]
    public void A_tank_without_sides_never_simply_fits() =>
        Assert.Equal(Fit.NotKnown, TankFit.Worst(
            TankFit.InTank(Fish.Plain("one"), TankSize.OfVolume(Volume.FromLitres(1000)))));

    [Fact]
    public void Room_for_each_alone_is_not_room_for_all()
    {
        var group = Gathering.Of([Fish.Plain("one"), Fish.Plain("other")], Fish.Ranges, Box(60, 30, 30));
        Assert.Equal(Verdict.Suits, group.Verdict);
        Assert.Equal((Fit.NotKnown, Fit.Fits), (group.Fit, group.FitOfEach));
        Assert.Equal(RoomState.BelowSum, group.Room!.State);
        Assert.Equal(12, group.Count);
    }

    [Theory]
    [InlineData(25, Fit.Fits)]
    [InlineData(27, Fit.Fits)]
    [InlineData(28, Fit.Nearly)]
    [InlineData(28.1, Fit.DoesNotFit)]
    [InlineData(12, Fit.DoesNotFit)]
    public void Water_fits_within_the_range_and_nearly_within_a_degree(double celsius, Fit expected) =>
        Assert.Equal(expected, TankFit.Worst(TankFit.InWater(
            Fish.Plain("one"), Fish.Ranges, new Dictionary<string, double> { ["temperature"] = celsius })));

    [Fact]
    public void A_species_without_any_water_never_fits_and_never_suits()
    {
        var silent = Fish.Plain("one") with { Water = [] };
        var water = new Dictionary<string, double> { ["temperature"] = 25, ["ph"] = 7 };
        Assert.Equal(Fit.NotKnown, TankFit.Worst(TankFit.InWater(silent, Fish.Ranges, water)));
        Assert.Equal(Verdict.WithCare, Fish.Judge.Judge(silent, Fish.Plain("other")).Verdict);
        Assert.Equal(3, Fish.Judge.Judge(silent, Fish.Plain("other")).Reasons.Count);
    }

    private static TankSize Box(double length, double width, double height) => TankSize.OfBox(
        Length.FromCentimetres(length), Length.FromCentimetres(width), Length.FromCentimetres(height));
}
