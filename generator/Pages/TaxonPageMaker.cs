using CareSheets.Collection;

namespace CareSheets.Pages;

/// <summary>Makes the pages of orders, families and genera, and the lists of them.</summary>
internal sealed class TaxonPageMaker(Site site)
{
    public IEnumerable<IPage> Make()
    {
        var collection = site.Collection;
        var orders = collection.Orders.Select(t => Counted(t, Routes.Orders));
        yield return Index(Routes.Orders, "orders", [new TaxaGroup(new Link("", ""), [.. orders])]);
        yield return Index(Routes.Families, "families", Groups(collection.Families, TaxonRank.Order, Routes.Families));
        yield return Index(Routes.Genera, "genera", Groups(collection.Genera, TaxonRank.Family, Routes.Genera));
        foreach (var taxon in collection.Orders.Concat(collection.Families).Concat(collection.Genera))
            yield return Page(taxon);
        foreach (var (former, now) in collection.FormerGenera)
            yield return Moved(former, now);
    }

    private MovedGenusPage Moved(string former, IReadOnlyList<Taxon> now)
    {
        var address = Routes.Taxon(TaxonRank.Genus, former);
        var lead = site.Words.Say("sentence.genus_moved", ("genus", former));
        return new MovedGenusPage(
            address, site.Frames.Make(address, former, lead, isListed: false), former, lead,
            [.. now.Select(t => Counted(t, address))]);
    }

    public CountedLink Counted(Taxon taxon, string from) => new(
        taxon.Name, Routes.Between(from, Routes.Taxon(taxon.Rank, taxon.Name)),
        site.Words.Count("fact.species", taxon.Entries.Count), taxon.Rank == TaxonRank.Genus);

    private TaxaPage Index(string address, string key, IReadOnlyList<TaxaGroup> groups)
    {
        var heading = site.Words[$"sentence.{key}_heading"];
        var lead = site.Words[$"sentence.{key}_lead"];
        return new TaxaPage(
            address, site.Frames.Make(address, heading, lead), heading, lead, groups, OtherRanks(address));
    }

    private IReadOnlyList<Link> OtherRanks(string address) =>
    [
        .. new[] { (Routes.Orders, "orders"), (Routes.Families, "families"), (Routes.Genera, "genera") }
            .Where(rank => rank.Item1 != address)
            .Select(rank => new Link(
                site.Words[$"sentence.{rank.Item2}_heading"], Routes.Between(address, rank.Item1))),
    ];

    private IReadOnlyList<TaxaGroup> Groups(IReadOnlyList<Taxon> taxa, TaxonRank parent, string from) =>
    [
        .. taxa.GroupBy(t => t.Parent)
            .OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => new TaxaGroup(
                new Link(g.Key, Routes.Between(from, Routes.Taxon(parent, g.Key))),
                [.. g.Select(t => Counted(t, from))])),
    ];

    private TaxonPage Page(Taxon taxon)
    {
        var address = Routes.Taxon(taxon.Rank, taxon.Name);
        var rank = site.Words[$"rank.{taxon.Rank}"];
        var rows = new SpeciesRows(site, address);
        var count = site.Words.Count("fact.species", taxon.Entries.Count);
        return new TaxonPage(
            address,
            site.Frames.Make(address, $"{taxon.Name} ({rank})", $"{taxon.Name}: {count}"),
            rank, taxon.Name, taxon.Rank == TaxonRank.Genus, Parent(taxon, address), count,
            taxon.Rank == TaxonRank.Order
                ? rows.Under(TaxonRank.Family, taxon.Entries)
                : rows.Under(TaxonRank.Genus, taxon.Entries));
    }

    private static Link? Parent(Taxon taxon, string from) => taxon.Rank switch
    {
        TaxonRank.Order => null,
        TaxonRank.Family => new Link(taxon.Parent, Routes.Between(from, Routes.Taxon(TaxonRank.Order, taxon.Parent))),
        TaxonRank.Genus => new Link(taxon.Parent, Routes.Between(from, Routes.Taxon(TaxonRank.Family, taxon.Parent))),
    };
}
