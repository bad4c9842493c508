using CareSheets.Proofing;
using CareSheets.Species;

namespace CareSheets.Pages.Stock;

/// <summary>What staff must know of a species before they put a hand into its bag, the gravest first.</summary>
internal sealed class StaffCautions(Site site)
{
    public IReadOnlyList<string> Of(Entry entry) =>
        [.. CautionsOf.Entry(entry, site.Collection.Practice.Hazards).Select(c => c.Brief)];

    /// <summary>What holds for every aquarium, in one line.</summary>
    public string Everywhere => string.Join(' ',
        CautionsOf.EveryAquarium(site.Collection.Practice.Hazards).Select(c => c.Brief));
}
