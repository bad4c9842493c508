using CareSheets.Diagnostics;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>
/// A caution that tells of an inherited hazard to people sends whoever is hurt to a doctor or the like; else the
/// hazard's own words stand beside it, and the reader finds both.
/// </summary>
internal sealed class HazardWithoutAdvice(IReadOnlyList<Hazard> hazards) : ICodedRule
{
    public static readonly CodedText Text = new(
        "hazard-is-told-with-advice", Severity.Note,
        "It tells of a hazard and not whom to call, so page and papers tell the hazard in its own words too",
        "Write what to do, as in: use a tub, and show a doctor any prick that swells.",
        "Whoever is hurt has no time to look it up", "common practice, no source");

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry) =>
        from hazard in CautionsOf.Inherited(entry, hazards)
        where hazard.IsForHands
        from caution in entry.Fields.Words("cautions")
        where hazard.IsNamedBy(caution.Value) && !hazard.IsToldBy(caution.Value) &&
            hazard.DeniedBy(caution.Value) is null && hazard.DoubtedBy(caution.Value) is null
        select Text.Breach(entry, caution.Span, "cautions", $"“{Excerpt.Of(caution.Value)}”",
            new RelatedSpan(hazard.Name.Span, $"the hazard {hazard.Name.Value} is here"));
}
