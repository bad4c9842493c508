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

    [Fact]
    public void A_hyphen_between_letters_may_end_a_line_and_a_range_of_numbers_may_not()
    {
        Assert.Equal(["blue-", "eyed"], LineBreaker.Break("blue-eyed", Face.Plain, 4, 10));
        Assert.True(LineBreaker.KeepsWhole("blue-eyed", Face.Plain, 4, 10));
        Assert.False(LineBreaker.KeepsWhole("10-20000", Face.Plain, 4, 10));
    }
}
