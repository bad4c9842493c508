using CareSheets.Arrivals;

namespace CareSheets.PackingLists;

/// <summary>Where fish come from, in the word of the arrival's schema; empty where nobody knows.</summary>
internal static class ProvenanceWord
{
    public static string Of(Provenance provenance) => provenance switch
    {
        Provenance.Wild => "wild",
        Provenance.Bred => "bred",
        Provenance.Farmed => "farmed",
        Provenance.Unknown => "",
    };
}
