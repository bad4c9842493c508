namespace CareSheets.Collection;

/// <summary>A country of ISO 3166-1: its two-letter code and English short name.</summary>
/// <param name="Continent">As a sentence names it: Africa, the Americas, Asia, Europe, Oceania, Antarctica.</param>
public sealed record Country(string Code, string Name, string Continent);
