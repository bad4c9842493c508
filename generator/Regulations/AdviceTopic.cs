namespace CareSheets.Regulations;

/// <summary>
/// What laws on selling animals ask written advice to tell: the union of the duties that the shop
/// has written down, in the order in which a sheet names them.
/// </summary>
public enum AdviceTopic
{
    ScientificName,
    VernacularName,
    OriginCountry,
    Habitat,
    Size,
    LifeSpan,
    SocialBehaviour,
    ActivityTime,
    MinimumTank,
    Furnishing,
    WaterValues,
    Temperature,
    Food,
    CareRoutine,
    SexDifferences,
    SpecialCautions,
    SettlingIn,
    VetReferral,
    Costs,
    Seller,
}
