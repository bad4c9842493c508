using CareSheets.Quantities;

namespace CareSheets.Tankmates;

/// <summary>
/// One reason against keeping two species together, without their names: equal reasons are equal
/// whoever they are about. What a sentence says of either species are its <see cref="Detail"/>s.
/// </summary>
/// <param name="Field">The care range or word that it is about, or empty.</param>
/// <param name="Shared">What both have in common, where that is the point; in <paramref name="Dimension"/>.</param>
public sealed record Reason(
    ReasonKind Kind, Verdict Weight, string Field = "", Stretch? Shared = null, Dimension? Dimension = null)
{
    /// <summary>Something needed is unknown of one species or both, which never counts as fine.</summary>
    public static Reason Unknown(string field, bool isKnownOfOne, bool isKnownOfOther) => new(
        isKnownOfOne ? ReasonKind.UnknownOfOther
        : isKnownOfOther ? ReasonKind.UnknownOfOne
        : ReasonKind.UnknownOfBoth,
        Verdict.WithCare, field);
}
