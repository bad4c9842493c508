namespace CareSheets.Regulations;

/// <summary>
/// Whether the law of one place reaches another, by their ISO 3166 codes: GB-ENG is a part of GB.
/// </summary>
public static class Jurisdiction
{
    /// <summary>
    /// A law of the whole reaches each part. A law of a part is taken to reach a shop that has said
    /// only in which country it is, for it may stand in that part.
    /// </summary>
    public static bool Reaches(string law, string shop) =>
        law == RegulationList.Everywhere || law == shop ||
        shop.StartsWith(law + "-", StringComparison.Ordinal) || law.StartsWith(shop + "-", StringComparison.Ordinal);

    /// <summary>A shop that has not said where it is, is reached only by what binds everywhere.</summary>
    public static bool Binds(IEnumerable<string> applies, string? shop) =>
        applies.Any(law => law == RegulationList.Everywhere || (shop is not null && Reaches(law, shop)));
}
