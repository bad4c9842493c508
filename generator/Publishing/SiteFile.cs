namespace CareSheets.Publishing;

/// <summary>A file of the site before it is written: its address with forward slashes, and its bytes.</summary>
public sealed record SiteFile(string Address, ReadOnlyMemory<byte> Bytes);
