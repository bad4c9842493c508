using CareSheets.Species;

namespace CareSheets.Collection;

/// <summary>Ranks of the classification above the species that have pages.</summary>
public enum TaxonRank
{
    Order,
    Family,
    Genus,
}

/// <summary>
/// A taxon of the collection with its entries by scientific name. <see cref="Parent"/> is the name
/// of the taxon one rank up, empty for an order.
/// </summary>
public sealed record Taxon(TaxonRank Rank, string Name, string Parent, IReadOnlyList<Entry> Entries);
