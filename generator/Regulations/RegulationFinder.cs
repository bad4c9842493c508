using CareSheets.Names;
using CareSheets.Species;

namespace CareSheets.Regulations;

/// <summary>
/// Looks for taxa in the lists of law, by every name and at every rank. It needs no entry: a name
/// read off a packing list will do, though a list that names families then leaves the answer open
/// unless the family is given.
/// </summary>
/// <param name="lists">All lists that the shop has written down.</param>
/// <param name="jurisdiction">ISO 3166 code of the place whose law binds the shop, if it has said so.</param>
public sealed class RegulationFinder(IEnumerable<RegulationList> lists, string? jurisdiction)
{
    private readonly IReadOnlyList<RegulationList> _lists =
        [.. lists.OrderBy(l => l.Key, StringComparer.Ordinal)];

    public string? Jurisdiction => jurisdiction;

    public IEnumerable<RegulationList> Binding => _lists.Where(Binds);

    public RegulationStatus Of(Entry entry) => Of(AskedTaxon.Of(entry));

    public RegulationStatus Of(ScientificName name, string? family = null, string? order = null) =>
        Of(AskedTaxon.Of(name, family, order));

    public RegulationStatus Of(AskedTaxon taxon)
    {
        var here = new List<ListOutcome>();
        var elsewhere = new List<ListOutcome>();
        foreach (var list in _lists)
        {
            var outcome = ListSearch.Ask(list, taxon);
            if (Binds(list))
                here.Add(outcome);
            else if (outcome.Kind == OutcomeKind.Listed)
                elsewhere.Add(outcome);
        }
        here.Sort(ListOutcome.WorstFirst);
        elsewhere.Sort(ListOutcome.WorstFirst);
        return new RegulationStatus(here, elsewhere);
    }

    private bool Binds(RegulationList list) => Regulations.Jurisdiction.Binds(list.Applies, jurisdiction);
}
