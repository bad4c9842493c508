using System.Text.Json;
using CareSheets.Commands;
using CareSheets.Quantities;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;
using CsCheck;

namespace CareSheets.Tests.Tankmates;

/// <summary>A tank that has room for each alone is never said to have it for all.</summary>
public sealed class RoomForAllTests
{
    internal static readonly string[] Eight =
    [
        "paracheirodon-innesi", "rohanella-titteya", "hemigrammus-erythrozonus", "hyphessobrycon-amandae",
        "trigonostigma-heteromorpha", "gastrodermus-pygmaeus", "megalamphodus-megalopterus", "otocinclus-vittatus",
    ];

    /// <summary>Worked by hand: in L, asked in all, the Swiss least, and what the tank holds.</summary>
    [Theory]
    [InlineData(100, 20, 100, true, RoomState.Enough, Fit.Fits)]
    [InlineData(100, 20, 99, true, RoomState.BelowSum, Fit.NotKnown)]
    [InlineData(100, 20, 50, true, RoomState.BelowSum, Fit.NotKnown)]
    [InlineData(100, 20, 49, true, RoomState.BelowShare, Fit.DoesNotFit)]
    [InlineData(100, 60, 59, true, RoomState.BelowSwissLeast, Fit.DoesNotFit)]
    [InlineData(50, 60, 59, true, RoomState.BelowSwissLeast, Fit.DoesNotFit)]
    [InlineData(100, 20, 95, false, RoomState.Enough, Fit.Fits)] // one species: its own limits speak of that
    [InlineData(100, 60, 59, false, RoomState.BelowSwissLeast, Fit.DoesNotFit)]
    public void The_sum_the_share_and_the_law_each_speak(
        double asked, double swiss, double given, bool several, RoomState state, Fit fit)
    {
        var room = new RoomForAll(asked, swiss, given, several);
        Assert.Equal((state, fit), (room.State, room.Fit));
    }

    [Fact]
    public void Two_that_each_fit_alone_are_never_below_the_share() =>
        Gen.Select(Gen.Double[10, 500], Gen.Double[10, 500], Gen.Double[1, 3]).Sample((one, other, times) =>
            Assert.NotEqual(RoomState.BelowShare, new RoomForAll(
                one + other, 0, times * Math.Max(one, other), true).State));

    [Fact]
    public void Nobody_is_told_that_a_tank_nearly_fits_more_than_it_was_asked_for() =>
        Gen.Select(Fish.Any("a"), Fish.Any("b"), Gen.Double[20, 300]).Sample((a, b, litres) =>
        {
            var tank = TankSize.OfVolume(Volume.FromLitres(litres));
            var group = Gathering.Of([a, b], Fish.Ranges, tank);
            Assert.True(group.Room!.Asked <= litres || group.Fit > Fit.Nearly);
            Assert.True(group.Room.SwissLeast <= litres || group.Fit == Fit.DoesNotFit);
        });

    [Fact]
    public void Sixty_eight_fish_do_not_fit_112_litres()
    {
        var group = Of("80x35x40cm", Eight);
        Assert.Equal((Fit.DoesNotFit, Fit.Fits), (group.Fit, group.FitOfEach));
        var text = new GatheringText(Shop.Site).Print(group);
        Assert.Contains("Your tank does not fit.", text, StringComparison.Ordinal);
        Assert.Contains("less than even the least of the Swiss Animal Protection Ordinance", text,
            StringComparison.Ordinal);
        Assert.DoesNotContain("nearly", text, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(GatheringJson.Print(Shop.Site, group));
        var tank = json.RootElement.GetProperty("tank");
        Assert.Equal("DoesNotFit", tank.GetProperty("fit").GetString());
        var together = tank.GetProperty("together");
        Assert.Equal("BelowSwissLeast", together.GetProperty("state").GetString());
        Assert.Equal(Eight.Sum(n => Mate(n).Housing.Volume), together.GetProperty("volumeForAll").GetDouble());
    }

    [Fact]
    public void Between_the_share_and_the_sum_the_words_are_that_nobody_has_said_it()
    {
        var text = new GatheringText(Shop.Site).Print(Of("80x35x40cm", Eight[..2]));
        Assert.Contains("Each fits alone, but nobody has said that all fit together: ask us.", text,
            StringComparison.Ordinal);
        Assert.Contains("Added up, species after species, the sheets ask for", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Those_to_be_kept_apart_are_told_that_and_no_recipe()
    {
        var group = Of("200x80x80cm", "dichotomyctere-nigroviridis", "paracheirodon-innesi", "danio-rerio");
        var text = new GatheringText(Shop.Site).Print(group);
        Assert.Contains("No tank fits them together", text, StringComparison.Ordinal);
        Assert.EndsWith("""
            none of these pairs is left:
              zebra danio + green spotted puffer
              green spotted puffer + neon tetra

            """.ReplaceLineEndings("\n"), text, StringComparison.Ordinal);
        Assert.DoesNotContain("at least", text.Split("No tank fits")[1], StringComparison.Ordinal);
        Assert.Equal(Fit.DoesNotFit, group.Fit);
        using var json = JsonDocument.Parse(GatheringJson.Print(Shop.Site, group));
        Assert.Equal(2, json.RootElement.GetProperty("apart").GetArrayLength());
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("water").ValueKind);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("tank").GetProperty("together").ValueKind);
    }

    [Fact]
    public void Who_lives_only_with_its_own_kind_is_told_so()
    {
        var alone = Shop.Mates.Mates.First(m => m.Neighbours == Neighbours.None);
        Assert.Contains("; it lives in a tank without other species",
            new GatheringText(Shop.Site).Print(Of("200x80x80cm", alone.Name)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("60 cm", 60.0, null)]
    [InlineData("60cm, 54 L", 60.0, 54.0)]
    [InlineData("24in,20 US gal", 60.96, 75.70823568)] // 1 US gal = 3.785411784 L (NIST SP 811, Appendix B.8)
    public void A_length_is_read_alone_and_with_a_volume(string text, double cm, double? litres)
    {
        var tank = TankText.Read(text).Tank!;
        Assert.Equal(cm, tank.Length!.Value.InCentimetres, 9);
        Assert.Equal(litres, tank.Volume?.InLitres is { } known ? Math.Round(known, 8) : null);
        Assert.Null(tank.Width);
    }

    [Theory]
    [InlineData("60 cm, 54", TankProblem.NotAVolume)]
    [InlineData("54 L, 60 cm", TankProblem.NotALength)]
    [InlineData("60 cm, 54 L, 30 cm", TankProblem.NotALength)]
    [InlineData("6 cm", TankProblem.Impossible)]
    [InlineData("60 cm, 0 L", TankProblem.Impossible)]
    public void What_is_no_length_with_a_volume_is_refused(string text, TankProblem problem) =>
        Assert.Equal(new TankReading(null, problem), TankText.Read(text));

    [Theory]
    [InlineData("1000 L", Fit.NotKnown, "Please give the length too.")]
    [InlineData("200 cm", Fit.NotKnown, "Please give the volume too")]
    [InlineData("30 cm", Fit.DoesNotFit, "Please give the volume too")]
    [InlineData("200 cm, 1000 L", Fit.Fits, "")]
    public void What_is_not_given_of_a_tank_never_counts_as_fine_and_is_asked_for(string tank, Fit fit, string asked)
    {
        var group = Of(tank, "boraras-brigittae"); // its sheet states a length and a volume, and no other side
        Assert.Equal(fit, group.Fit);
        var text = new GatheringText(Shop.Site).Print(group);
        Assert.Equal(asked.Length > 0, text.Contains("Please give", StringComparison.Ordinal));
        Assert.Contains(asked, text, StringComparison.Ordinal);
    }

    internal static Gathering Of(string tank, params string[] names) =>
        Gathering.Of(names.Select(Mate), Shop.Collection.Ranges, TankText.Read(tank).Tank);

    private static Tankmate Mate(string name) => Shop.Mates.Mates[Shop.Mates.PlaceOf(name)];
}
