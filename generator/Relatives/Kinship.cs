using CareSheets.Collection;
using CareSheets.Species;
using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>The classification of a collection as a tree: orders, families, genera, and species as leaves.</summary>
internal sealed class Kinship
{
    /// <summary>Ranks of the tree, counted from the root down.</summary>
    public const int Order = 0, Family = 1, Genus = 2, Species = 3;

    private readonly Dictionary<string, int> _genera;
    private readonly Dictionary<string, int> _families;
    private readonly Dictionary<string, int> _orders;

    public Kinship(SpeciesCollection collection)
    {
        Entries = collection.Entries;
        _orders = Numbers(collection.Orders);
        _families = Numbers(collection.Families);
        _genera = Numbers(collection.Genera);
        Tree = NestedTree.FromParents(
        [
            [.. collection.Orders.Select(_ => 0)],
            [.. collection.Families.Select(f => _orders[f.Parent])],
            [.. collection.Genera.Select(g => _families[g.Parent])],
            [.. Entries.Select(e => _genera[e.Genus])],
        ]);
    }

    public IReadOnlyList<Entry> Entries { get; }

    public NestedTree Tree { get; }

    /// <summary>The number of a taxon at its rank, or nothing when the collection does not have it.</summary>
    public int? Find(TaxonRank rank, string name)
    {
        var numbers = rank switch
        {
            TaxonRank.Order => _orders,
            TaxonRank.Family => _families,
            TaxonRank.Genus => _genera,
        };
        return numbers.TryGetValue(name, out var number) ? number : null;
    }

    private static Dictionary<string, int> Numbers(IReadOnlyList<Taxon> taxa) =>
        taxa.Index().ToDictionary(t => t.Item.Name, t => t.Index);
}
