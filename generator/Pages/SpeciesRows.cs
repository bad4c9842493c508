using CareSheets.Collection;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>Species as rows and groups of rows of a list.</summary>
internal sealed class SpeciesRows(Site site, string from)
{
    private readonly ListFigures _figures = new(site);
    private readonly FamilyNames _families = new(site);

    /// <summary>A row is the same on every page but for the way back to the top.</summary>
    public SpeciesRow Row(Entry entry) =>
        site.Rows.GetOrAdd((entry.Name, Routes.Root(from)), _ => Make(entry));

    private SpeciesRow Make(Entry entry) => new(
        entry.ScientificName.Value.ToString(),
        entry.VernacularName,
        Routes.Between(from, Routes.Species(entry)),
        _families.Of(entry.Family.Value),
        _figures.Length(entry),
        _figures.Keep(entry, "temperature"),
        _figures.Keep(entry, "ph"))
    {
        LatinFamily = _families.LatinBeside(entry.Family.Value),
    };

    public IReadOnlyList<SpeciesRow> Rows(IEnumerable<Entry> entries) => [.. entries.Select(Row)];

    /// <summary>Entries under the taxa of a rank, in order of their names.</summary>
    public IReadOnlyList<SpeciesGroup> Under(TaxonRank rank, IEnumerable<Entry> entries) =>
    [
        .. entries.GroupBy(e => rank == TaxonRank.Genus ? e.Genus : e.Family.Value)
            .OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => new SpeciesGroup(g.Key, TaxonLink(rank, g.Key), Rows(g))),
    ];

    public Link TaxonLink(TaxonRank rank, string name) => _families.Link(rank, name, from);
}
