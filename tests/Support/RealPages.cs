using CareSheets.Collection;
using CareSheets.Commands;
using CareSheets.Pages;
using CareSheets.Quantities;

namespace CareSheets.Tests.Support;

/// <summary>The repository's own collection with words and prose, for tests that make its pages in memory.</summary>
internal static class RealPages
{
    private static readonly Lazy<(Site Site, IReadOnlyDictionary<string, SpeciesProse> Prose)> Made = new(Make);

    public static Site Site => Made.Value.Site;

    public static SpeciesCollection Collection => Site.Collection;

    public static IReadOnlyDictionary<string, SpeciesProse> Prose => Made.Value.Prose;

    private static (Site, IReadOnlyDictionary<string, SpeciesProse>) Make()
    {
        var bench = new Workbench(new ContentSettings
        {
            Content = Repository.At("content"),
            Theme = Repository.At("themes", "riffle"),
        });
        var collection = bench.ReadCollection();
        Assert.NotNull(collection);
        var site = new Site(collection, bench.ReadWords()!, UnitSystem.Both) { Law = bench.Law };
        return (site, bench.RenderProse(collection));
    }
}
