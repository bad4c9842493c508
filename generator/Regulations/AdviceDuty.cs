using CareSheets.Diagnostics;

namespace CareSheets.Regulations;

/// <summary>
/// A duty to advise the buyer of an animal, with the topics that the advice must tell. That a sheet
/// tells them all does not make it lawful: only the authority can say so.
/// </summary>
/// <param name="Applies">Places that it binds, as ISO 3166 codes.</param>
/// <param name="Topics">What the advice must tell.</param>
/// <param name="Wished">What it should tell as well.</param>
/// <param name="Checked">Day of the text that was read; nothing where nobody knows.</param>
public sealed record AdviceDuty(
    Sourced<string> Title,
    IReadOnlyList<string> Applies,
    string Clause,
    IReadOnlyList<AdviceTopic> Topics,
    IReadOnlyList<AdviceTopic> Wished,
    LegalEvidence Evidence,
    DateOnly? Checked,
    string Source,
    string? Note);
