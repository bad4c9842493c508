using CareSheets.Quantities;
using CareSheets.Tankmates;

namespace CareSheets.Tests.Tankmates;

/// <summary>Mouths and prey against what was measured.</summary>
public sealed class PredationTests
{
    /// <summary>Mihalitsis &amp; Bellwood 2017, PLoS ONE 12:e0184679: 27 % and 20 % of 80 mm SL.</summary>
    [Theory]
    [InlineData(Mouth.Medium, 2.16)]
    [InlineData(Mouth.Small, 1.60)]
    public void The_deepest_prey_of_the_two_measured_mouths_is_met(Mouth mouth, double cm) =>
        Assert.Equal(cm, Predation.Gape(Hunter(8, LengthBasis.Standard) with { Mouth = mouth }), 9);

    /// <summary>Gaeta et al. 2018, PLoS ONE 13:e0194092: prey of up to 46 % of 100 mm TL.</summary>
    [Fact]
    public void The_longest_prey_on_record_is_met() =>
        Assert.Equal(4.6, Predation.Reach(Hunter(10, LengthBasis.Total)), 9);

    /// <summary>
    /// Froese, Thorson &amp; Reyes 2014 (J. Appl. Ichthyol. 30:78–85), log10 a and b of W = a·L^b (g, cm
    /// TL). An ellipsoid as long as the body without its tail, as deep as assumed and of usual
    /// thickness must weigh the same within 2.2 times, the spread of a at fixed b.
    /// </summary>
    [Theory]
    [InlineData(BodyShape.EelLike, -2.99, 3.06, 0.9)]
    [InlineData(BodyShape.Elongated, -2.41, 3.12, 0.8)]
    [InlineData(BodyShape.Fusiform, -1.95, 3.04, 0.6)]
    [InlineData(BodyShape.Deep, -1.70, 3.01, 0.4)]
    public void A_body_of_the_assumed_depth_weighs_what_such_fish_weigh(
        BodyShape shape, double logA, double b, double thicknessPerDepth)
    {
        const double total = 10, density = 1.05;
        var standard = total / 1.2;
        var depth = Predation.DepthShare(shape) * standard;
        var weight = density * Math.PI / 6 * standard * depth * depth * thicknessPerDepth;
        var published = Math.Pow(10, logA) * Math.Pow(total, b);
        Assert.InRange(weight / published, 1 / 2.2, 2.2);
    }

    /// <summary>FishXing help file: TL/SL of five species lies between 1.142 and 1.252.</summary>
    [Fact]
    public void A_change_of_basis_makes_the_predator_larger_and_the_prey_smaller()
    {
        var (standard, total) = (Hunter(10, LengthBasis.Standard), Hunter(10, LengthBasis.Total));
        Assert.Equal(12.5, Predation.LargestTotal(standard), 9);
        Assert.Equal(11.4, Predation.SmallestTotal(standard), 9);
        Assert.True(Predation.Gape(total) > 0.2 * 10 / 1.252);
        Assert.Equal(Predation.DepthShare(BodyShape.Fusiform) * 8, Predation.Depth(total), 9);
    }

    [Fact]
    public void An_eel_of_80_cm_does_not_open_its_mouth_wider_than_twice_its_depth()
    {
        var eel = Hunter(80, LengthBasis.Standard) with { Shape = BodyShape.EelLike, Mouth = Mouth.Large };
        Assert.Equal(2 * 0.06 * 80, Predation.Gape(eel), 9);
    }

    [Theory]
    [InlineData(4.5, BodyShape.Fusiform, Verdict.KeepApart)] // fits mouth and reach
    [InlineData(6.5, BodyShape.Deep, Verdict.KeepApart)] // a third of the length, however deep
    [InlineData(10.5, BodyShape.Fusiform, Verdict.WithCare)] // beyond by less than a fifth
    [InlineData(12.0, BodyShape.Fusiform, Verdict.Suits)]
    public void A_hunter_of_20_cm_meets_prey(double cm, BodyShape shape, Verdict expected) =>
        Assert.Equal(expected, Predation.Judge(Hunter(20, LengthBasis.Total), Prey(cm, shape)));

    [Theory]
    [InlineData(6.5, Verdict.KeepApart)]
    [InlineData(9.0, Verdict.WithCare)] // too deep for the mouth, but below 46 % of the length
    [InlineData(12.0, Verdict.Suits)]
    public void A_hunter_with_a_tiny_mouth_still_harasses_deep_prey_that_is_short(double cm, Verdict expected)
    {
        var hunter = Hunter(20, LengthBasis.Total) with { Mouth = Mouth.Tiny };
        Assert.Equal(expected, Predation.Judge(hunter, Prey(cm, BodyShape.Deep)));
    }

    [Theory]
    [InlineData(3.9, Verdict.KeepApart)] // a fifth of its length: what piscivores usually take
    [InlineData(4.5, Verdict.WithCare)]
    [InlineData(9.5, Verdict.Suits)]
    public void A_fish_that_takes_what_fits_its_mouth_meets_prey(double cm, Verdict expected)
    {
        var chancer = Hunter(20, LengthBasis.Total) with { Mouth = Mouth.Medium, Appetite = Appetite.Opportunist };
        Assert.Equal(expected, Predation.Judge(chancer, Prey(cm, BodyShape.Fusiform)));
    }

    private static Body Hunter(double cm, LengthBasis basis) =>
        new(Stretch.Exactly(cm), basis, BodyShape.Fusiform, Mouth.Small, Appetite.Hunter);

    private static Body Prey(double cm, BodyShape shape) =>
        new(Stretch.Exactly(cm), LengthBasis.Total, shape, Mouth.Tiny, Appetite.None);
}
