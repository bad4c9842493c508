using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Proofing;
using CareSheets.Proofing.Prose;
using CareSheets.Rendering;
using CareSheets.Species;

namespace CareSheets.Commands;

/// <summary>
/// All that can be said of an entry that lacks something, so that its other mistakes come in the same run. What would
/// speak of a stand-in is left out.
/// </summary>
internal static class UnfinishedProof
{
    public static IEnumerable<Diagnostic> Of(Entry entry, SpeciesCollection collection, RuleProof rules)
    {
        var prose = new DiagnosticBag();
        new ProseRenderer(collection).Render(entry, prose);
        return rules.Describe(entry).Concat(ProseCheck.Check(entry, new SpeciesNames(collection)))
            .Concat(prose.Sorted()).Where(found => found.HasPlaces);
    }
}
