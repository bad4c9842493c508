using CareSheets.Collection;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>Makes the pages of orders, families and genera, and the lists of them.</summary>
internal sealed class TaxonPageMaker(Site site)
{
    private readonly FamilyNames _families = new(site);
    private readonly EvidenceText _evidence = new(site);

    public IEnumerable<IPage> Make()
    {
        var collection = site.Collection;
        var orders = _families.Counted(collection.Orders, Routes.Orders);
        yield return Index(Routes.Orders, "orders", [new TaxaGroup(new Link("", ""), orders)]);
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
        var lead = site.Words["sentence.genus_moved"];
        return new MovedGenusPage(
            address, site.Frames.Make(address, former, lead, isListed: false), former, lead,
            _families.Counted(now, address));
    }

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
                _families.Link(parent, g.Key, from), _families.Counted(g, from))),
    ];

    private TaxonPage Page(Taxon taxon)
    {
        var address = Routes.Taxon(taxon.Rank, taxon.Name);
        var rank = site.Words[$"rank.{taxon.Rank}"];
        var rows = new SpeciesRows(site, address);
        var count = site.Words.Count("fact.species", taxon.Entries.Count);
        var page = new TaxonPage(
            address,
            site.Frames.Make(address, $"{taxon.Name} ({rank})", $"{taxon.Name}: {count}"),
            rank, taxon.Name, taxon.Rank == TaxonRank.Genus, Parent(taxon, address), count,
            taxon.Rank switch
            {
                TaxonRank.Order => rows.Under(TaxonRank.Family, taxon.Entries),
                TaxonRank.Family => rows.Under(TaxonRank.Genus, taxon.Entries),
                TaxonRank.Genus => [new SpeciesGroup(taxon.Name, null, rows.Rows(taxon.Entries))],
            });
        return taxon.Rank == TaxonRank.Family && _families.NoteOf(taxon.Name) is { } note ? Told(page, note) : page;
    }

    /// <summary>The page of a family that customers have a name for.</summary>
    private TaxonPage Told(TaxonPage page, FamilyNote note) => page with
    {
        Frame = site.Frames.Make(page.Address, $"{note.VernacularName} ({page.Name})", note.Text),
        Name = note.VernacularName,
        LatinName = page.Name,
        OtherNames = string.Join(
            site.Words["sentence.list_separator"], note.VernacularNames.Skip(1).Select(n => n.Value)),
        Text = note.Text,
        Evidence = site.Words.Say("list.family_evidence", ("source", _evidence.Of(note.Evidence))),
    };

    private Link? Parent(Taxon taxon, string from) => taxon.Rank switch
    {
        TaxonRank.Order => null,
        TaxonRank.Family => _families.Link(TaxonRank.Order, taxon.Parent, from),
        TaxonRank.Genus => _families.Link(TaxonRank.Family, taxon.Parent, from),
    };
}
