namespace CareSheets.Diagnostics;

/// <summary>
/// Every message the program can give, by code; numbers are never used again. RD reading,
/// SC schema, QT quantities, LK names and links, AU relatives, TP templates, PB publishing, CD cards.
/// </summary>
public static class DiagnosticCatalogue
{
    public static readonly IReadOnlyList<DiagnosticCode> All =
    [
        .. ReadingCodes.All, .. SchemaCodes.All, .. QuantityCodes.All, .. LinkCodes.All,
        .. RelativesCodes.All, .. TemplateCodes.All, .. PublishingCodes.All,
        .. CardCodes.All,
    ];
}
