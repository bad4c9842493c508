namespace CareSheets.Paper;

/// <summary>A stretch of a text that is set in one face.</summary>
public sealed record TypeRun(string Text, Face Face);
