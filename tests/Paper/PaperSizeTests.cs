using CareSheets.Paper;

namespace CareSheets.Tests.Paper;

/// <summary>Sizes of paper: ISO 216:2007 (A4, A6, A7), ANSI/ASME Y14.1 (Letter, 8.5 by 11 in).</summary>
public sealed class PaperSizeTests
{
    [Theory]
    [InlineData("A6", 105, 148)]
    [InlineData("a7", 74, 105)]
    [InlineData("A6 landscape", 148, 105)]
    [InlineData("4x6 in", 101.6, 152.4)]
    [InlineData("6x4in", 152.4, 101.6)]
    [InlineData("90x55 mm", 90, 55)]
    [InlineData("100 × 70 mm", 100, 70)]
    [InlineData(" 10 x 7 cm ", 100, 70)]
    [InlineData("3.5x2.25\"", 88.9, 57.15)]
    public void A_size_is_read_as_people_write_it(string text, double width, double height)
    {
        var size = PaperSizeText.Read(text);
        Assert.NotNull(size);
        Assert.Equal((width, height), (Math.Round(size.Value.Width, 2), Math.Round(size.Value.Height, 2)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("A5")]
    [InlineData("90x55")]
    [InlineData("90,5x55 mm")]
    [InlineData("-90x55 mm")]
    [InlineData("40x40 mm")]
    [InlineData("90x900 mm")]
    [InlineData("1e3x100 mm")]
    [InlineData("landscape")]
    public void What_is_no_size_of_a_card_is_not_read(string text) => Assert.Null(PaperSizeText.Read(text));

    [Theory]
    [InlineData("A6")]
    [InlineData("A7 landscape")]
    [InlineData("90x55 mm")]
    [InlineData("101.6x152.4 mm")]
    public void What_is_put_on_record_is_read_again(string text) =>
        Assert.Equal(text, PaperSizeText.Of(PaperSizeText.Read(text)!.Value));

    [Theory]
    [InlineData(double.NaN, 100)]
    [InlineData(double.PositiveInfinity, 100)]
    [InlineData(100, 0)]
    [InlineData(-1, 100)]
    public void No_paper_has_an_impossible_side(double width, double height) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PaperSize.Of(width, height));

    [Theory]
    [InlineData("A6", 4)]
    [InlineData("A7", 8)]
    [InlineData("90x55 mm", 10)]
    [InlineData("4x6 in", 2)]
    [InlineData("200x290 mm", 1)]
    public void As_many_cards_as_can_lie_on_a4(string size, int count)
    {
        var imposition = Imposition.Of(PaperSizeText.Read(size)!.Value, PaperSize.A4)!;
        Assert.Equal(count, imposition.Count);
        for (var i = 0; i < count; i++)
        {
            var (x, y) = imposition.Place(i);
            Assert.True(x >= -0.05 && x + imposition.Card.Width <= imposition.Sheet.Width + 0.05);
            Assert.True(y >= -0.05 && y + imposition.Card.Height <= imposition.Sheet.Height + 0.05);
        }
    }

    [Fact]
    public void A_card_larger_than_the_sheet_has_no_place() =>
        Assert.Null(Imposition.Of(PaperSize.Of(250, 250), PaperSize.A4));

    /// <summary>Marks lie on the edges of cards, so that none runs through what a card shows.</summary>
    [Theory]
    [InlineData("A6")]
    [InlineData("90x55 mm")]
    [InlineData("A7 landscape")]
    public void Cut_marks_run_along_edges_of_cards_only(string size)
    {
        var imposition = Imposition.Of(PaperSizeText.Read(size)!.Value, PaperSize.Letter)!;
        var marks = imposition.CutMarks(imposition.Count).ToList();
        Assert.NotEmpty(marks);
        foreach (var mark in marks)
        {
            var inside = Enumerable.Range(0, imposition.Count).Select(imposition.Place).Any(at =>
                Math.Max(mark.X1, at.X + 0.1) < Math.Min(mark.X2 + 0.05, at.X + imposition.Card.Width - 0.1) &&
                Math.Max(mark.Y1, at.Y + 0.1) < Math.Min(mark.Y2 + 0.05, at.Y + imposition.Card.Height - 0.1));
            Assert.False(inside, mark.ToString());
        }
    }

    [Fact]
    public void Places_without_a_card_get_no_marks()
    {
        var imposition = Imposition.Of(PaperSize.A7, PaperSize.A4)!;
        Assert.True(imposition.CutMarks(1).Count() < imposition.CutMarks(8).Count());
    }
}
