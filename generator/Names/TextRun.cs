namespace CareSheets.Names;

/// <summary>A stretch of a text that is set in one face: Latin for a scientific name, plain for the rest.</summary>
public sealed record TextRun(string Text, bool IsLatin);
