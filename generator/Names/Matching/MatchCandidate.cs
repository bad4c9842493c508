namespace CareSheets.Names.Matching;

/// <summary>A species that a written name may mean.</summary>
/// <param name="By">The name, code or vernacular name of the species that was met.</param>
/// <param name="Sureness">0 to 1, for ordering; no probability.</param>
public sealed record MatchCandidate(NamedSpecies Species, MatchRung Rung, string By, double Sureness);
