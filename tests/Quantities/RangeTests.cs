using CareSheets.Quantities;
using CsCheck;

namespace CareSheets.Tests.Quantities;

public class RangeTests
{
    /// <summary>Whole centimetres, so that touching and equal ends come up often.</summary>
    private static readonly Gen<Length> Lengths =
        Gen.Int[0, 12].Select(value => Length.FromCentimetres(value));

    private static readonly Gen<Range<Length>> Ranges = Gen.OneOf(
        Gen.Select(Lengths, Lengths, (a, b) => Range<Length>.Between(a < b ? a : b, a < b ? b : a)),
        Lengths.Select(Range<Length>.AtLeast),
        Lengths.Select(Range<Length>.AtMost),
        Lengths.Select(Range<Length>.Exactly),
        Gen.Const(default(Range<Length>)));

    [Fact]
    public void A_range_whose_ends_are_swapped_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Range<Temperature>.Between(
                Temperature.FromCelsius(26), Temperature.FromCelsius(22)));

    [Fact]
    public void Both_ends_belong_to_the_range()
    {
        var range = Between(22, 26);

        Assert.True(range.Contains(Temperature.FromCelsius(22)));
        Assert.True(range.Contains(Temperature.FromCelsius(26)));
        Assert.False(range.Contains(Temperature.FromCelsius(21.999)));
        Assert.False(range.Contains(Temperature.FromCelsius(26.001)));
    }

    [Fact]
    public void A_missing_end_lets_everything_in_on_its_side()
    {
        var warm = Range<Temperature>.AtLeast(Temperature.FromCelsius(20));

        Assert.True(warm.HasMin && !warm.HasMax && warm.Max is null);
        Assert.True(warm.Contains(Temperature.FromCelsius(90)));
        Assert.False(warm.Contains(Temperature.FromCelsius(19)));
        Assert.True(Range<Temperature>.AtMost(Temperature.FromCelsius(20))
            .Contains(Temperature.FromCelsius(0)));
    }

    [Fact]
    public void A_default_range_says_nothing()
    {
        Assert.False(default(Range<Length>).HasMin || default(Range<Length>).HasMax);
        Ranges.Sample(range =>
        {
            Assert.Equal(range, range.Intersect(default));
            Assert.Equal(default, range.Hull(default));
        });
    }

    [Fact]
    public void Ranges_that_touch_overlap_in_one_value()
    {
        var common = Between(20, 24).Intersect(Between(24, 28));

        Assert.Equal(Range<Temperature>.Exactly(Temperature.FromCelsius(24)), common);
        Assert.True(common!.Value.IsSingle);
        Assert.Null(Between(20, 23).Intersect(Between(24, 28)));
    }

    [Fact]
    public void Width_has_the_type_of_a_difference()
    {
        TemperatureDifference? width = Between(22, 26).Width();
        Length? span = Range<Length>.Between(
            Length.FromCentimetres(2), Length.FromCentimetres(5)).Width();
        AcidityDifference? acidity = Range<Acidity>.Between(
            Acidity.FromPH(6.5), Acidity.FromPH(7)).Width();

        Assert.Equal(4, width!.Value.InKelvins);
        Assert.Equal(3, span!.Value.InCentimetres);
        Assert.Equal(0.5, acidity!.Value.InPH);
        Assert.Null(Range<Length>.AtLeast(default).Width());
    }

    [Fact]
    public void What_two_ranges_share_is_exactly_what_lies_in_both() =>
        Gen.Select(Ranges, Ranges, Lengths).Sample((a, b, value) =>
        {
            var common = a.Intersect(b);
            Assert.Equal(a.Contains(value) && b.Contains(value), common?.Contains(value) ?? false);
            Assert.Equal(common, b.Intersect(a));
            Assert.Equal(common is not null, a.Overlaps(b));
            Assert.Equal(a.Overlaps(b), b.Overlaps(a));
            Assert.Equal(a, a.Intersect(a));
        });

    [Fact]
    public void A_hull_contains_both_and_nothing_smaller_does() =>
        Gen.Select(Ranges, Ranges, Ranges).Sample((a, b, other) =>
        {
            var hull = a.Hull(b);
            Assert.True(hull.Contains(a) && hull.Contains(b));
            Assert.Equal(hull, b.Hull(a));
            Assert.True(!(other.Contains(a) && other.Contains(b)) || other.Contains(hull));
        });

    [Fact]
    public void Containing_a_range_is_sharing_all_of_it() =>
        Gen.Select(Ranges, Ranges).Sample((a, b) =>
            Assert.Equal(a.Contains(b), a.Intersect(b) == b));

    [Fact]
    public void Equal_ranges_have_equal_hashes() =>
        Gen.Select(Ranges, Ranges).Sample((a, b) =>
            Assert.True(a != b || (a.Equals((object)b) && a.GetHashCode() == b.GetHashCode())));

    private static Range<Temperature> Between(double low, double high) =>
        Range<Temperature>.Between(Temperature.FromCelsius(low), Temperature.FromCelsius(high));
}
