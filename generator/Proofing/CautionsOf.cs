using CareSheets.Diagnostics;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Proofing;

/// <summary>
/// The cautions of an entry in order of importance: inherited hazards, the gravest first, then the entry's
/// own cautions in the writer's order. A caution of its own that tells a hazard better stands in its place.
/// </summary>
/// <remarks>An empty list says nothing about safety: nobody has told of a hazard, that is all.</remarks>
public static class CautionsOf
{
    public static IReadOnlyList<Caution> Entry(Entry entry, IReadOnlyList<Hazard> hazards)
    {
        var ownTold = new HashSet<Sourced<string>>();
        var first = new List<Caution>();
        foreach (var hazard in Inherited(entry, hazards))
        {
            var own = entry.Cautions.FirstOrDefault(c => hazard.IsToldBy(c.Value));
            if (own is null)
                first.Add(Of(hazard));
            else if (ownTold.Add(own))
                first.Add(Of(own, entry, hazard.Kind));
        }
        return [.. first, .. entry.Cautions.Where(c => !ownTold.Contains(c)).Select(c => Of(c, entry, null))];
    }

    /// <summary>Hazards that an entry has by its taxon or its figures, the gravest first.</summary>
    public static IEnumerable<Hazard> Inherited(Entry entry, IReadOnlyList<Hazard> hazards) =>
        hazards.Where(h => !h.IsGeneral && h.When.Judge(entry.Fields) == Truth.Yes).OrderBy(h => h.Kind);

    /// <summary>Hazards of every aquarium, whatever swims in it, the gravest first.</summary>
    public static IReadOnlyList<Caution> EveryAquarium(IReadOnlyList<Hazard> hazards) =>
        [.. hazards.Where(h => h.IsGeneral).OrderBy(h => h.Kind).Select(Of)];

    private static Caution Of(Hazard hazard) =>
        new(hazard.Says, hazard.Brief, hazard.Kind, hazard.Evidence, hazard.Name.Span);

    private static Caution Of(Sourced<string> own, Entry entry, HazardKind? kind) =>
        new(own.Value, own.Value, kind, entry.Evidence, own.Span);
}
