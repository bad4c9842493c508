using CareSheets.Paper;
using CsCheck;

namespace CareSheets.Tests.Paper;

public sealed class LineBreakerTests
{
    private static readonly Gen<string> Texts =
        Gen.String[Gen.Char["abcdeWi -/.0123456789°é漢"], 0, 120];

    [Fact]
    public void No_line_is_wider_than_given_and_no_letter_is_lost() => Gen.Select(Texts, Gen.Double[8, 90])
        .Sample((text, width) =>
        {
            var lines = LineBreaker.Break(text, Face.Plain, 4, width);
            Assert.All(lines, l => Assert.True(FaceWidths.Of(l, Face.Plain, 4) <= width + 1e-9, l));
            Assert.Equal(
                text.Replace(" ", "", StringComparison.Ordinal),
                string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
        });

    [Fact]
    public void Words_stay_whole_where_they_can() =>
        Assert.Equal(["three small", "fishes"], LineBreaker.Break("three small fishes", Face.Plain, 4, 22));

    [Theory]
    [InlineData("it needs 17 g/L of salt", "17 g/L")]
    [InlineData("it grows to 12 cm here", "12 cm")]
    [InlineData("it is kept at 28 °C, and", "28 °C")]
    [InlineData("at most 0.02 mg/L of it", "0.02 mg/L")]
    public void A_figure_stays_with_its_unit(string text, string whole) =>
        Assert.All(Enumerable.Range(15, 40), width => Assert.Contains(
            LineBreaker.Break(text, Face.Plain, 3, width), l => l.Contains(whole, StringComparison.Ordinal)));

    [Fact]
    public void A_slash_between_words_may_end_a_line() =>
        Assert.Equal(["rocks/", "roots"], LineBreaker.Break("rocks/roots", Face.Plain, 4, 11));

    [Fact]
    public void A_hyphen_between_letters_may_end_a_line_and_a_range_of_numbers_may_not()
    {
        Assert.Equal(["blue-", "eyed"], LineBreaker.Break("blue-eyed", Face.Plain, 4, 10));
        Assert.True(LineBreaker.KeepsWhole("blue-eyed", Face.Plain, 4, 10));
        Assert.False(LineBreaker.KeepsWhole("10-20000", Face.Plain, 4, 10));
    }
}
