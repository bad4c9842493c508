using CareSheets.Quantities;

namespace CareSheets.Tests.Quantities;

public class DimensionCatalogueTests
{
    public static TheoryData<string> Keys() =>
        [.. DimensionCatalogue.All.Select(dimension => dimension.Key)];

    [Fact]
    public void Every_dimension_is_found_by_its_key_and_no_other_is()
    {
        Assert.NotEmpty(DimensionCatalogue.All);
        Assert.All(DimensionCatalogue.All, dimension =>
            Assert.Same(dimension, DimensionCatalogue.Find(dimension.Key)));
        Assert.Null(DimensionCatalogue.Find("Temperature"));
        Assert.Null(DimensionCatalogue.Find(""));
    }

    [Fact]
    public void Every_quantity_knows_its_own_dimension()
    {
        Dimension[] known =
        [
            Temperature.Dimension, TemperatureDifference.Dimension, Acidity.Dimension,
            AcidityDifference.Dimension, GeneralHardness.Dimension, CarbonateHardness.Dimension,
            Length.Dimension, Volume.Dimension, Conductivity.Dimension, Salinity.Dimension,
            Duration.Dimension, Concentration.Dimension, Ammonia.Dimension, Pressure.Dimension,
            Altitude.Dimension, Elapsed.Dimension, Share.Dimension,
        ];

        Assert.Equal(DimensionCatalogue.All, known);
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void The_canonical_unit_leaves_figures_alone(string key)
    {
        var canonical = DimensionCatalogue.Find(key)!.Canonical;

        Assert.Equal(3.7, canonical.ToCanonical(3.7));
        Assert.Equal(3.7, canonical.FromCanonical(3.7));
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_unit_converts_there_and_back(string key) =>
        Assert.All(DimensionCatalogue.Find(key)!.Units, unit =>
            Assert.All(ReferenceGrid.Between(0, 1000), figure =>
                Assert.Equal(figure, unit.FromCanonical(unit.ToCanonical(figure)), 1e-9)));

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_symbol_may_also_be_written(string key)
    {
        var dimension = DimensionCatalogue.Find(key)!;

        Assert.All(dimension.Units.Where(unit => unit.Symbol.Length > 0), unit =>
            Assert.Equal(unit, dimension.Find(unit.Symbol)));
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void No_doubtful_spelling_is_also_a_unit(string key)
    {
        var dimension = DimensionCatalogue.Find(key)!;

        Assert.All(dimension.Ambiguous.SelectMany(doubt => doubt.Spellings), typed =>
            Assert.Null(dimension.Find(typed)));
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Readers_are_shown_a_unit_of_their_own(string key)
    {
        var dimension = DimensionCatalogue.Find(key)!;

        Assert.True(dimension.For(UnitSystem.Metric).Serves(UnitSystem.Metric));
        Assert.True(dimension.For(UnitSystem.US).Serves(UnitSystem.US));
        Assert.Equal(dimension.For(UnitSystem.Metric), dimension.For(UnitSystem.Both));
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Steps_grow_and_include_the_usual_one(string key) =>
        Assert.All(DimensionCatalogue.Find(key)!.Units.Where(unit => unit.Steps.Count > 0), unit =>
        {
            Assert.Equal(0, unit.Steps[0].From);
            Assert.Contains(unit.Steps, step => step.Step == unit.Step);
            Assert.All(unit.Steps.Zip(unit.Steps.Skip(1)), pair => Assert.True(
                pair.First.From < pair.Second.From && pair.First.Step < pair.Second.Step));
        });

    [Theory]
    [MemberData(nameof(Keys))]
    public void The_example_is_in_the_right_form(string key)
    {
        var dimension = DimensionCatalogue.Find(key)!;

        Assert.True(QuantityText.Parse(dimension.Example, dimension).Ok);
    }

    [Theory]
    [InlineData("° c", "celsius")]
    [InlineData("ºC", "celsius")]
    [InlineData("˚C", "celsius")]
    [InlineData("℉", "fahrenheit")]
    [InlineData("DEG. F", "fahrenheit")]
    public void Look_alikes_case_and_spaces_do_not_matter(string typed, string unit) =>
        Assert.Equal(unit, DimensionCatalogue.Temperature.Find(typed)?.Key);
}
