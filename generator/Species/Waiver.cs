using CareSheets.Diagnostics;

namespace CareSheets.Species;

/// <summary>A writer's word that a rule of husbandry does not hold for this species, and why.</summary>
/// <param name="Rule">The rule's name.</param>
public sealed record Waiver(Sourced<string> Rule, string Reason);
