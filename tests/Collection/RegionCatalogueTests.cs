using CareSheets.Collection;

namespace CareSheets.Tests.Collection;

/// <summary>
/// Regions of the United Nations geoscheme (M49). How many countries each has is counted by hand from the list of
/// the UN as remembered (from memory); TW, which that list lacks, is beside its neighbours here.
/// </summary>
public sealed class RegionCatalogueTests
{
    [Theory]
    [InlineData("CM", "Africa|Sub-Saharan Africa|Middle Africa")]
    [InlineData("EG", "Africa|Northern Africa")]
    [InlineData("TZ", "Africa|Sub-Saharan Africa|Eastern Africa")]
    [InlineData("NG", "Africa|Sub-Saharan Africa|Western Africa")]
    [InlineData("BR", "Americas|Latin America and the Caribbean|South America")]
    [InlineData("TT", "Americas|Latin America and the Caribbean|Caribbean")]
    [InlineData("MX", "Americas|Latin America and the Caribbean|Central America")]
    [InlineData("TH", "Asia|South-eastern Asia")]
    [InlineData("LK", "Asia|Southern Asia")]
    [InlineData("CN", "Asia|Eastern Asia")]
    [InlineData("PG", "Oceania|Melanesia")]
    [InlineData("AQ", "")]
    [InlineData("ZZ", "")]
    public void A_country_lies_in_its_regions_from_large_to_small(string code, string regions) =>
        Assert.Equal(regions, string.Join('|', RegionCatalogue.Of(code)));

    [Theory]
    [InlineData("Africa", 60)]
    [InlineData("Americas", 57)]
    [InlineData("Asia", 51)] // 50 and TW
    [InlineData("Europe", 51)] // Sark, which the UN lists, has no code of ISO 3166-1
    [InlineData("Oceania", 29)]
    public void Each_region_has_as_many_countries_as_the_list_of_the_UN(string region, int countries) =>
        Assert.Equal(countries, CountryCatalogue.All.Count(
            c => RegionCatalogue.Of(c.Code) is [var largest, ..] && largest == region));

    [Fact]
    public void Every_country_but_Antarctica_lies_somewhere() =>
        Assert.Equal("AQ", Assert.Single(CountryCatalogue.All, c => RegionCatalogue.Of(c.Code).Count == 0).Code);
}
