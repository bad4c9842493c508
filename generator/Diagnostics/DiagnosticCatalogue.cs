namespace CareSheets.Diagnostics;

/// <summary>
/// Every message the program can give, by code; numbers are never used again. RD reading,
/// SC schema, QT quantities, LK names and links, AU relatives, PR proofing, TP templates, PB publishing, WA water,
/// AR arrivals and packing lists, NM nomenclature, PF prose against figures, RG regulations and duties, CD cards.
/// </summary>
public static class DiagnosticCatalogue
{
    public static readonly IReadOnlyList<DiagnosticCode> All =
    [
        .. ReadingCodes.All, .. SchemaCodes.All, .. QuantityCodes.All, .. LinkCodes.All,
        .. RelativesCodes.All, .. ProofingCodes.All, .. TemplateCodes.All, .. PublishingCodes.All, .. WaterCodes.All,
        .. ArrivalCodes.All, .. PackingListCodes.All, .. NomenclatureCodes.All,
        .. ProseCodes.All, .. RegulationCodes.All, .. CardCodes.All,
    ];
}
