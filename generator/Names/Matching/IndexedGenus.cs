namespace CareSheets.Names.Matching;

/// <summary>A genus with the names in it.</summary>
internal sealed record IndexedGenus(string Name, SoundedWord Word, uint Letters, IReadOnlyList<IndexedName> Names);
