namespace CareSheets.Arrivals;

/// <summary>What a test kit counts total ammonia as.</summary>
public enum AmmoniaBasis
{
    Nitrogen,
    Ammonia,
    Ammonium,
}
