namespace CareSheets.Collection;

/// <summary>A country of ISO 3166-1: its two-letter code and English short name.</summary>
public sealed record Country(string Code, string Name);
