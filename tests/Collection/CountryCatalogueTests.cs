using System.Globalization;
using CareSheets.Collection;

namespace CareSheets.Tests.Collection;

/// <summary>Countries of ISO 3166-1, compared with what the machine's own library knows of them.</summary>
public sealed class CountryCatalogueTests
{
    [Fact]
    public void There_are_249_and_each_code_is_two_capitals()
    {
        Assert.Equal(249, CountryCatalogue.All.Count());
        Assert.All(CountryCatalogue.All, c => Assert.Matches("^[A-Z]{2}$", c.Code));
        Assert.All(CountryCatalogue.All, c => Assert.Equal(c.Name.Trim(' ', '"'), c.Name));
        Assert.Equal(249, CountryCatalogue.All.Select(c => c.Name).Distinct().Count());
    }

    [Theory]
    [InlineData("MM", "Myanmar")]
    [InlineData("BR", "Brazil")]
    [InlineData("NO", "Norway")]
    [InlineData("CI", "Côte d'Ivoire")]
    [InlineData("EH", "Western Sahara")]
    [InlineData("SS", "South Sudan")]
    public void Known_codes_have_their_names(string code, string name) =>
        Assert.Equal(name, CountryCatalogue.Find(code)?.Name.Replace('’', '\''));

    /// <summary>Regions of the UN M49 geoscheme, from memory.</summary>
    [Theory]
    [InlineData("BR", "the Americas")]
    [InlineData("TT", "the Americas")]
    [InlineData("CD", "Africa")]
    [InlineData("TR", "Asia")]
    [InlineData("RU", "Europe")]
    [InlineData("PG", "Oceania")]
    [InlineData("ID", "Asia")]
    public void Countries_have_their_continents(string code, string continent) =>
        Assert.Equal(continent, CountryCatalogue.Find(code)?.Continent);

    [Fact]
    public void Every_country_is_on_one_of_six_continents() => Assert.Equal(
        ["Africa", "Antarctica", "Asia", "Europe", "Oceania", "the Americas"],
        CountryCatalogue.All.Select(c => c.Continent).Distinct().Order(StringComparer.Ordinal));

    // User-assigned, reserved or withdrawn: none is an officially assigned code of ISO 3166-1.
    [Theory]
    [InlineData("XK")]
    [InlineData("UK")]
    [InlineData("EU")]
    [InlineData("SU")]
    [InlineData("YU")]
    [InlineData("ZZ")]
    [InlineData("AA")]
    [InlineData("mm")]
    [InlineData("")]
    public void Codes_that_are_not_assigned_are_no_countries(string code) => Assert.Null(CountryCatalogue.Find(code));

    /// <summary>
    /// .NET's regions are those of Unicode CLDR, which has a few more: XK (user-assigned) and DG, EA and
    /// IC, reserved in ISO 3166-1 but not assigned.
    /// </summary>
    [Fact]
    public void The_codes_are_those_of_the_machines_library()
    {
        var known = CultureInfo.GetCultures(CultureTypes.SpecificCultures)
            .Select(c => new RegionInfo(c.Name).TwoLetterISORegionName)
            .Where(code => code.Length == 2 && char.IsAsciiLetterUpper(code[0]))
            .Where(code => code is not ("XK" or "DG" or "EA" or "IC"))
            .ToHashSet();
        Assert.True(known.Count > 200, $"The library knows {known.Count} regions only.");
        Assert.Empty(known.Except(CountryCatalogue.All.Select(c => c.Code)));
    }
}
