using CareSheets.Collection;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>Species as rows and groups of rows of a list.</summary>
internal sealed class SpeciesRows(Site site, string from)
{
    public SpeciesRow Row(Entry entry) => new(
        entry.ScientificName.Value.ToString(),
        entry.VernacularName,
        Routes.Between(from, Routes.Species(entry)),
        entry.Family.Value,
        site.Quantities.Show(entry.Adult.Length.Value, Rounding.Upward).First,
        Keep(entry, "temperature"),
        Keep(entry, "ph"),
        SearchText(entry));

    public IReadOnlyList<SpeciesRow> Rows(IEnumerable<Entry> entries) => [.. entries.Select(Row)];

    /// <summary>Entries under the taxa of a rank, in order of their names.</summary>
    public IReadOnlyList<SpeciesGroup> Under(TaxonRank rank, IEnumerable<Entry> entries) =>
    [
        .. entries.GroupBy(e => rank == TaxonRank.Genus ? e.Genus : e.Family.Value)
            .OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => new SpeciesGroup(g.Key, TaxonLink(rank, g.Key), Rows(g))),
    ];

    public Link TaxonLink(TaxonRank rank, string name) =>
        new(name, Routes.Between(from, Routes.Taxon(rank, name)), rank == TaxonRank.Genus);

    private string Keep(Entry entry, string field) => entry.Range(field)?.Of(RangeKind.Keep) is { } keep
        ? site.Quantities.Show(keep.Range.Value, Rounding.Inward).First
        : site.Words["sentence.unknown"];

    /// <summary>All names that a visitor may type, in lower case.</summary>
    private string SearchText(Entry entry) => string.Join(' ',
        entry.VernacularNames.Select(n => n.Value)
            .Concat(entry.FormerNames.Select(n => n.Value.ToString()))
            .Concat(entry.TradeCodes.Select(c => c.Value))
            .Append(entry.ScientificName.Value.ToString())
            .Append(entry.Family.Value)
            .Concat(entry.Origin.CountryCodes.Select(c => CountryName.Of(c.Value, site.Words)))
            .Concat(entry.Origin.WaterBodies.Select(w => w.Value))).ToLowerInvariant();
}
