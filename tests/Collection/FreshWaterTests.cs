using CareSheets.Collection;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Collection;

/// <summary>What an entry says of salt, and what its silence means, on the repository's own entries.</summary>
public sealed class FreshWaterTests
{
    [Theory]
    [InlineData("dichotomyctere-nigroviridis", true, true)] // 7–17 g/L
    [InlineData("poecilia-velifera", false, true)] // up to 10 g/L
    [InlineData("carinotetraodon-travancoricus", false, false)] // no more than 0.5 g/L
    [InlineData("danio-rerio", false, false)] // silent
    public void Salt_is_needed_borne_or_neither(string name, bool needs, bool bears)
    {
        var entry = RealContent.Collection.Find(name)!;
        Assert.Equal((needs, bears), (FreshWater.NeedsSalt(entry), FreshWater.BearsSalt(entry)));
    }

    [Theory]
    [InlineData("danio-rerio", true)]
    [InlineData("poecilia-reticulata", true)] // a relative bears salt, which none needs
    [InlineData("carinotetraodon-travancoricus", false)] // it is stated
    public void Silence_means_fresh_water_where_no_relative_needs_salt(string name, bool expected) => Assert.Equal(
        expected, FreshWater.GoesWithoutSaying(RealContent.Collection.Find(name)!, RealContent.Collection));

    [Fact]
    public void A_relative_that_needs_salt_is_found_by_genus_and_by_family()
    {
        string? Of(string genus, string family) =>
            FreshWater.NeedyRelative(RealContent.Collection, genus, family)?.Name;
        Assert.Equal("dichotomyctere-nigroviridis", Of("Dichotomyctere", "Nowhere"));
        Assert.Equal("dichotomyctere-nigroviridis", Of("Novum", "Tetraodontidae"));
        Assert.Null(Of("Danio", "Danionidae"));
    }
}
