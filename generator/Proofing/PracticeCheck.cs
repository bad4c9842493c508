using CareSheets.Diagnostics;
using CareSheets.Rules;

namespace CareSheets.Proofing;

/// <summary>
/// Whether the fish room's own files do what they say: each rule's examples show it, and no hazard that
/// every aquarium has is left out.
/// </summary>
internal static class PracticeCheck
{
    private static readonly IReadOnlyList<(HazardKind Kind, string Name)> Everywhere =
    [
        (HazardKind.Infection, "infection"), (HazardKind.Electricity, "electricity"),
        (HazardKind.Release, "release"), (HazardKind.TapWater, "tap water"),
        (HazardKind.Medicines, "medicines"),
    ];

    public static IEnumerable<Diagnostic> Describe(Practice practice) =>
        practice.Rules.SelectMany(Examples).Concat(Untold(practice));

    private static IEnumerable<Diagnostic> Examples(Rule rule)
    {
        if (!rule.IsBrokenBy(rule.Fires))
            yield return Bad(rule, "fires", Outcome(rule, rule.Fires, "it keeps the rule"));
        if (!rule.IsKeptBy(rule.Passes))
            yield return Bad(rule, "passes", Outcome(rule, rule.Passes, "it breaks the rule"));
    }

    private static string Outcome(Rule rule, Species.EntryFields example, string otherwise) =>
        rule.When.Judge(example) != Truth.Yes ? "the rule does not concern it"
        : rule.Expects.Judge(example) == Truth.Open ? "it states too little to decide" : otherwise;

    private static Diagnostic Bad(Rule rule, string example, string outcome) =>
        Diagnostic.Of(ProofingCodes.BadExample, rule.Name.Span,
            ("rule", rule.Name.Value), ("example", example), ("outcome", outcome)).At(example);

    private static IEnumerable<Diagnostic> Untold(Practice practice) =>
        from kind in Everywhere
        where practice.HazardsFile is not null && !practice.Hazards.Any(h => h.IsGeneral && h.Kind == kind.Kind)
        select Diagnostic.Of(ProofingCodes.NotTold, practice.HazardsFile!, ("kind", kind.Name));
}
