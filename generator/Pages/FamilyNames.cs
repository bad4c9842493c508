using CareSheets.Collection;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>Taxa by the names that readers know: families by those of customers, where there are any.</summary>
internal sealed class FamilyNames(Site site)
{
    public FamilyNote? NoteOf(string family) => site.Collection.FamilyNotes.GetValueOrDefault(family);

    /// <summary>The customers' name, or the Latin one.</summary>
    public string Of(string family) => NoteOf(family)?.VernacularName ?? family;

    /// <summary>The Latin name where <see cref="Of"/> is another, else empty.</summary>
    public string LatinBeside(string family) => NoteOf(family) is null ? "" : family;

    public Link Link(TaxonRank rank, string name, string from) => rank == TaxonRank.Family
        ? new Link(Of(name), Routes.Between(from, Routes.Taxon(rank, name))) { Beside = LatinBeside(name) }
        : new Link(name, Routes.Between(from, Routes.Taxon(rank, name)), rank == TaxonRank.Genus);

    public CountedLink Counted(Taxon taxon, string from)
    {
        var link = Link(taxon.Rank, taxon.Name, from);
        return new CountedLink(
            link.Text, link.Href, site.Words.Count("fact.species", taxon.Entries.Count), link.IsLatin)
        {
            Beside = taxon.Rank == TaxonRank.Order ? Families(taxon) : link.Beside,
        };
    }

    /// <summary>By the names that are shown, for that is how people look them up.</summary>
    public IReadOnlyList<CountedLink> Counted(IEnumerable<Taxon> taxa, string from) =>
        [.. taxa.Select(t => Counted(t, from)).OrderBy(c => c.Text, StringComparer.OrdinalIgnoreCase)];

    /// <summary>What an order holds here, in customers' words; empty where nobody gave any.</summary>
    private string Families(Taxon order) => string.Join(
        site.Words["sentence.list_separator"],
        order.Entries.Select(e => NoteOf(e.Family.Value)?.VernacularName).OfType<string>().Distinct()
            .Order(StringComparer.OrdinalIgnoreCase));
}
