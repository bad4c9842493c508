using CareSheets.Paper;

namespace CareSheets.Tests.Paper;

/// <summary>
/// Widths against those that Adobe published for its core fonts (Adobe Core 14 AFM files, 1989-1997:
/// Helvetica, Helvetica-Bold, Times-Italic), in thousandths of an em, from memory. The faces here were
/// made to have the widths of Arial and Times New Roman, which were made to have these.
/// </summary>
public sealed class FaceWidthsTests
{
    [Theory]
    [InlineData(Face.Plain, " ", 278)]
    [InlineData(Face.Plain, "0", 556)]
    [InlineData(Face.Plain, "A", 667)]
    [InlineData(Face.Plain, "M", 833)]
    [InlineData(Face.Plain, "W", 944)]
    [InlineData(Face.Plain, "a", 556)]
    [InlineData(Face.Plain, "i", 222)]
    [InlineData(Face.Plain, "@", 1015)]
    [InlineData(Face.Plain, "é", 556)]
    [InlineData(Face.Plain, "°", 400)]
    [InlineData(Face.Plain, "–", 556)]
    [InlineData(Face.Bold, "A", 722)]
    [InlineData(Face.Bold, "a", 556)]
    [InlineData(Face.Bold, "i", 278)]
    [InlineData(Face.Bold, "m", 889)]
    [InlineData(Face.Latin, "A", 611)]
    [InlineData(Face.Latin, "a", 500)]
    [InlineData(Face.Latin, "i", 278)]
    [InlineData(Face.Latin, "M", 833)]
    public void Letters_are_as_wide_as_published(Face face, string letter, double thousandths) =>
        Assert.Equal(thousandths, FaceWidths.Of(letter, face, 1000), 1.0);

    [Fact]
    public void A_letter_that_no_table_has_counts_as_wide()
    {
        Assert.False(FaceWidths.KnowsAll("漢", Face.Plain));
        Assert.True(FaceWidths.Of("漢", Face.Plain, 1) >= 1.25);
    }

    [Fact]
    public void A_mark_over_a_letter_takes_no_room() =>
        Assert.Equal(FaceWidths.Of("e", Face.Plain, 1), FaceWidths.Of("e\u0301", Face.Plain, 1), 1e-9);
}
