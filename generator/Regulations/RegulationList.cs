using CareSheets.Diagnostics;

namespace CareSheets.Regulations;

/// <summary>A list of law that names species, as the shop wrote it down.</summary>
/// <param name="Key">Name of its file without the ending.</param>
/// <param name="Applies">Places that it binds, as ISO 3166 codes, or <see cref="Everywhere"/>.</param>
/// <param name="Territory">Where it binds, in words.</param>
/// <param name="Edition">Which text of the law this is, in words.</param>
/// <param name="Checked">Day of the text that was compared; nothing where nobody knows.</param>
/// <param name="ReviewMonths">After so many months it should be compared again.</param>
public sealed record RegulationList(
    string Key,
    Sourced<string> Title,
    string Authority,
    string Territory,
    IReadOnlyList<string> Applies,
    ListExtent Extent,
    LegalEvidence Evidence,
    string? Edition,
    Sourced<DateOnly>? Checked,
    int ReviewMonths,
    string Source,
    string? About,
    IReadOnlyList<RegulationRule> Rules)
{
    public const string Everywhere = "everywhere";

    /// <summary>The day after which it should have been compared again.</summary>
    public DateOnly? Due => Checked?.Value.AddMonths(ReviewMonths);
}
