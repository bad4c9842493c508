using System.Globalization;
using CareSheets.Pages.Outlines;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages.Outlines;

/// <summary>The fish on a page is as long as it is by the ruler under it, which is 400 units wide.</summary>
public sealed class SizePictureTests
{
    private const string Danio = "content/species/danio-rerio.md";

    [Theory]
    [InlineData("4.5 cm TL", 180, "10 cm")]
    [InlineData("9.5 cm TL", 190, "20 cm")] // a tenth of the ruler stays free
    [InlineData("30 cm TL", 300, "40 cm")]
    [InlineData("100 cm TL", 266.7, "150 cm")]
    [InlineData("180 cm TL", 240, "300 cm")]
    [InlineData("2 in TL", 203.2, "10 cm")] // 5.08 cm
    public void It_lies_over_the_shortest_ruler_that_holds_it(string length, double across, string end)
    {
        var picture = Picture(length);
        Assert.Equal(across, Across(picture), 0.1);
        Assert.Equal(end, picture.Marks[^1].Label);
        Assert.Equal("400", picture.Marks[^1].X);
    }

    [Fact]
    public void A_standard_length_ends_where_the_tail_begins()
    {
        var (whole, standard) = (Picture("5 cm TL"), Picture("5 cm SL"));
        Assert.Equal(Across(whole), Across(standard), 0.1);
        Assert.Equal(End(whole) / 0.82, End(standard), 0.01);
    }

    [Fact]
    public void A_stated_height_is_the_height_of_the_drawing()
    {
        var picture = Picture("5 cm TL, height: 6 cm");
        Assert.Equal("scale(200 240)", picture.Place);
    }

    private static SizePicture Picture(string length) =>
        ToySite.Read(change: w => w.Replace(Danio, "length: 4.5 cm TL", $"length: {length}"))
            .Species("danio-rerio").Picture;

    private static double Across(SizePicture picture) => double.Parse(
        picture.Place["scale(".Length..].Split(' ')[0], CultureInfo.InvariantCulture);

    /// <summary>The farthest figure across, in lengths.</summary>
    private static double End(SizePicture picture) =>
        DrawnPath.Parse(picture.Path.Replace("M", " M ").Replace("C", " C ").Replace("L", " L ").Split('A')[0])
            .Steps.Where(s => !char.IsAsciiLetter(s[0])).Select(s => double.Parse(s, CultureInfo.InvariantCulture))
            .Max();
}
