using CareSheets.Paper;

namespace CareSheets.Tests.Paper;

public sealed class ContentMarkTests
{
    /// <summary>
    /// SHA-256 of "abc" begins ba7816 (FIPS 180-4, the secure hash standard's own example): 11 10 7 8 1 6 in the
    /// letters of the mark, counted from 0.
    /// </summary>
    [Fact]
    public void A_mark_is_the_beginning_of_the_hash_in_letters() => Assert.Equal("TRM-NDL", ContentMark.Of(["abc"]));

    [Fact]
    public void Other_texts_have_another_mark()
    {
        Assert.NotEqual(ContentMark.Of(["ab", "c"]), ContentMark.Of(["a", "bc"]));
        var marks = Enumerable.Range(0, 5000).Select(i => ContentMark.Of([$"{i}"])).Distinct().Count();
        Assert.InRange(marks, 4990, 5000); // of 16.8 million, 5,000 share one about once
    }

    [Fact]
    public void No_letter_of_a_mark_is_taken_for_another() =>
        Assert.DoesNotContain(ContentMark.Letters, c => "AEIOU01QBSGZ".Contains(c, StringComparison.Ordinal));
}
