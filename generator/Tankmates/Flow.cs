namespace CareSheets.Tankmates;

/// <summary>How fast the water moves, from none upward.</summary>
public enum Flow
{
    Still,
    Gentle,
    Moderate,
    Fast,
    Torrent,
}
