using CareSheets.Quantities;
using Kind = CareSheets.Quantities.QuantityProblemKind;

namespace CareSheets.Tests.Quantities;

public class QuantityProblemTests
{
    // The offending part is what stands between the two bars; an empty part marks a gap.
    [Theory]
    [InlineData("||", "temperature", Kind.Empty)]
    [InlineData("|   |", "temperature", Kind.Empty)]
    [InlineData("|warm|", "temperature", Kind.NotANumber)]
    [InlineData("|about| 22 °C", "temperature", Kind.NotANumber)]
    [InlineData("|>|", "temperature", Kind.NotANumber)]
    [InlineData("|22 –|", "temperature", Kind.NotANumber)]
    [InlineData("22–|x °C|", "temperature", Kind.NotANumber)]
    [InlineData("|1e999| °C", "temperature", Kind.NotANumber)]
    [InlineData("|1e-3| °C", "temperature", Kind.NotANumber)]
    [InlineData("20–|2.4.1| °C", "temperature", Kind.NotANumber)]
    [InlineData("|22.| °C", "temperature", Kind.NotANumber)]
    [InlineData("|2½| in", "length", Kind.NotANumber)]
    [InlineData("|1/2| in", "length", Kind.NotANumber)]
    [InlineData("|٢٢| cm", "length", Kind.NotANumber)]
    [InlineData("|NaN °C|", "temperature", Kind.NotANumber)]
    [InlineData("22–26||", "temperature", Kind.NoUnit)]
    [InlineData("10||", "generalHardness", Kind.NoUnit)]
    [InlineData("|22,5|–26 °C", "temperature", Kind.CommaDecimal)]
    [InlineData("6.5–|7,0|", "acidity", Kind.CommaDecimal)]
    [InlineData("|26–22| °C", "temperature", Kind.Reversed)]
    [InlineData("|26 °C – 22| °C", "temperature", Kind.Reversed)]
    [InlineData("22–26 |°dH|", "temperature", Kind.WrongKind)]
    [InlineData("|pH| 7", "temperature", Kind.WrongKind)]
    [InlineData("4 |K|", "temperature", Kind.WrongKind)]
    [InlineData("4 |°dKH|", "generalHardness", Kind.WrongKind)]
    [InlineData("4 |°dGH|", "carbonateHardness", Kind.WrongKind)]
    [InlineData("4 |gal|", "length", Kind.WrongKind)]
    [InlineData("22–26 |°X|", "temperature", Kind.UnknownUnit)]
    [InlineData("22 |°|", "temperature", Kind.AmbiguousUnit)]
    [InlineData("10 |gal|", "volume", Kind.AmbiguousUnit)]
    [InlineData("100 |mg/L|", "generalHardness", Kind.AmbiguousUnit)]
    [InlineData("100 |ppm|", "carbonateHardness", Kind.AmbiguousUnit)]
    [InlineData("5 |ppt|", "salinity", Kind.AmbiguousUnit)]
    [InlineData("5 |‰|", "salinity", Kind.AmbiguousUnit)]
    [InlineData("|sg| 1.005", "salinity", Kind.AmbiguousUnit)]
    [InlineData("300 |µS|", "conductivity", Kind.AmbiguousUnit)]
    [InlineData("20 °C – 78 |°F|", "temperature", Kind.MixedUnits)]
    [InlineData("60 cm |TL|", "length", Kind.UnexpectedBasis)]
    [InlineData("60 L |SL|", "volume", Kind.UnexpectedBasis)]
    [InlineData("|-300| °C", "temperature", Kind.Impossible)]
    [InlineData("|−3| cm", "length", Kind.Impossible)]
    [InlineData("7–|15|", "acidity", Kind.Impossible)]
    [InlineData("20–24–|28| °C", "temperature", Kind.TooManyNumbers)]
    [InlineData("20 |24| °C", "temperature", Kind.TooManyNumbers)]
    [InlineData("> 20–|25| °C", "temperature", Kind.TooManyNumbers)]
    [InlineData("> 20 < |26| °C", "temperature", Kind.TooManyNumbers)]
    [InlineData("1 ft |6| in", "length", Kind.TooManyNumbers)]
    public void A_problem_names_its_kind_and_points_at_the_part(
        string marked, string dimension, Kind kind) =>
        Fails(marked, DimensionCatalogue.Find(dimension)!, basisRequired: false, kind);

    [Theory]
    [InlineData("2.5 cm||", Kind.MissingBasis)]
    [InlineData("2.5|| TL", Kind.NoUnit)]
    [InlineData("3 in SL – 4 in |TL|", Kind.MixedUnits)]
    [InlineData("3 |inSL|", Kind.UnknownUnit)]
    public void A_length_of_an_animal_without_a_plain_basis_is_refused(string marked, Kind kind) =>
        Fails(marked, DimensionCatalogue.Length, basisRequired: true, kind);

    [Theory]
    [InlineData("22-26", "temperature", "22–26 °C")]
    [InlineData("72–78", "temperature", "72–78 °F")]
    [InlineData("> 10", "generalHardness", "> 10 °dH")]
    [InlineData("22,5 - 26,5 C", "temperature", "22.5–26.5 °C")]
    [InlineData("22,5", "temperature", "22.5 °C")]
    [InlineData("1,000 L", "volume", "1000 L")]
    [InlineData("1,5 L", "volume", "1.5 L")]
    [InlineData("0,125 L", "volume", "0.125 L")]
    [InlineData("26–22 °C", "temperature", "22–26 °C")]
    [InlineData("10 gal", "volume", "10 US gal")]
    [InlineData("60 cm TL", "length", "60 cm")]
    [InlineData("1.005 sg", "salinity", "2–5 g/L")]
    [InlineData("200 ppm", "conductivity", "100–300 µS/cm")]
    public void A_problem_suggests_the_right_form(string typed, string dimension, string right)
    {
        var expected = DimensionCatalogue.Find(dimension)!;
        var suggestion = QuantityText.Parse(typed, expected).Problem.Values["suggestion"];

        Assert.Equal(right, suggestion);
        Assert.True(QuantityText.Parse(suggestion, expected).Ok);
    }

    [Theory]
    [InlineData("2.5 cm", "2.5 cm TL")]
    [InlineData("2.5", "2.5 cm TL")]
    [InlineData("2,5 cm SL", "2.5 cm SL")]
    [InlineData("big", "5 cm TL")]
    public void A_suggested_length_of_an_animal_has_a_basis(string typed, string right)
    {
        var problem = QuantityText.Parse(typed, DimensionCatalogue.Length, true).Problem;

        Assert.Equal(right, problem.Values["suggestion"]);
    }

    [Fact]
    public void A_unit_of_the_wrong_kind_names_both_kinds()
    {
        var problem = QuantityText.Parse("4 °dKH", DimensionCatalogue.GeneralHardness).Problem;

        Assert.Equal("generalHardness", problem.Values["expected"]);
        Assert.Equal("carbonateHardness", problem.Values["actual"]);
    }

    [Fact]
    public void An_impossible_figure_is_told_its_limit_in_the_unit_typed() =>
        Assert.Equal(
            "−459.67 °F",
            QuantityText.Parse("-500 °F", DimensionCatalogue.Temperature).Problem.Values["limit"]);

    [Fact]
    public void An_ambiguous_unit_says_why_and_what_else_to_write()
    {
        var values = QuantityText.Parse("10 gal", DimensionCatalogue.Volume).Problem.Values;

        Assert.Equal(nameof(AmbiguityReason.WhichGallon), values["reason"]);
        Assert.Equal("US gal, imp gal", values["choices"]);
    }

    private static void Fails(string marked, Dimension dimension, bool basisRequired, Kind kind)
    {
        var parts = marked.Split('|');
        var problem = QuantityText.Parse(string.Concat(parts), dimension, basisRequired).Problem;

        Assert.Equal(kind, problem.Kind);
        Assert.Equal((parts[0].Length, parts[1].Length), (problem.Index, problem.Length));
        Assert.Equal(ValuesOf(kind), problem.Values.Keys.Order());
    }

    /// <summary>
    /// As <see cref="QuantityProblemKind"/> promises them, in alphabetical order.
    /// </summary>
    private static string[] ValuesOf(Kind kind) => kind switch
    {
        Kind.Empty => ["suggestion"],
        Kind.NotANumber or Kind.NoUnit or Kind.CommaDecimal or Kind.TooManyNumbers =>
            ["found", "suggestion"],
        Kind.Reversed => ["first", "second", "suggestion"],
        Kind.WrongKind => ["actual", "choices", "expected", "unit"],
        Kind.UnknownUnit => ["choices", "unit"],
        Kind.AmbiguousUnit => ["choices", "reason", "suggestion", "unit"],
        Kind.MixedUnits => ["first", "second"],
        Kind.MissingBasis => ["choices", "suggestion"],
        Kind.UnexpectedBasis => ["basis", "suggestion"],
        Kind.Impossible => ["found", "limit"],
    };
}
