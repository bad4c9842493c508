using CareSheets.Collection;
using CareSheets.Commands;

namespace CareSheets.Tests.Support;

/// <summary>The repository's own collection, read once for all tests that look at it.</summary>
internal static class RealContent
{
    private static readonly Lazy<SpeciesCollection> Read = new(() =>
    {
        var bench = new Workbench(new ContentSettings { Content = Repository.At("content") });
        var collection = bench.ReadCollection();
        Assert.True(collection is not null && !bench.Bag.HasErrors, "The content has errors: run proof.");
        return collection!;
    });

    public static SpeciesCollection Collection => Read.Value;
}
