namespace CareSheets.Names.Matching;

/// <summary>A species that a line may mean, with every name it goes by.</summary>
/// <param name="Key">What the caller knows it by, such as the name of its entry.</param>
public sealed record NamedSpecies(
    string Key,
    ScientificName Valid,
    IReadOnlyList<ScientificName> Former,
    IReadOnlyList<string> TradeCodes,
    IReadOnlyList<string> VernacularNames);
