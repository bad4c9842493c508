namespace CareSheets.Tankmates;

/// <summary>What lies on the bottom; from fine sand to gravel in order of the grain.</summary>
public enum Substrate
{
    Any,
    Bare,
    FineSand,
    Sand,
    FineGravel,
    Gravel,
    Stones,
}
