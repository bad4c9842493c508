using CareSheets.Collection;
using CareSheets.Commands;
using CareSheets.Pages;
using CareSheets.Quantities;
using CareSheets.Relatives;
using CareSheets.Tankmates;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Tankmates;

/// <summary>The entries of the repository, read once, with every pair judged.</summary>
internal static class Shop
{
    private static readonly Lazy<(SpeciesCollection Collection, Words Words)> Read = new(ReadAll);
    private static readonly Lazy<RelativesEngine> Asked = new(() => RelativesEngine.Ask(Collection));
    private static readonly Lazy<Acquaintances> Judged = new(() => Acquaintances.Of(Collection, Relatives.Suggest));

    public static SpeciesCollection Collection => Read.Value.Collection;

    public static RelativesEngine Relatives => Asked.Value;

    public static Acquaintances Mates => Judged.Value;

    public static Site Site => new(Collection, Read.Value.Words, UnitSystem.Both)
    {
        Relatives = Relatives,
    };

    public static Pairing Pair(string one, string other) =>
        Mates.Pair(Mates.PlaceOf(one), Mates.PlaceOf(other));

    private static (SpeciesCollection, Words) ReadAll()
    {
        var bench = new Workbench(new SiteSettings
        {
            Content = Repository.At("content"),
            Theme = Repository.At("themes", "riffle"),
        });
        var collection = bench.ReadCollection();
        Assert.NotNull(collection);
        return (collection, bench.ReadWords()!);
    }
}
