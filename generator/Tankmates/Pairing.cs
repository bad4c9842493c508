namespace CareSheets.Tankmates;

/// <summary>
/// Two species and what speaks against keeping them together, the weightiest first. The one whose
/// name comes first in the alphabet stands first, so that asking either way gives the same.
/// </summary>
public sealed record Pairing(Tankmate One, Tankmate Other, IReadOnlyList<PairReason> Reasons)
{
    public Verdict Verdict => Reasons.Count == 0 ? Verdict.Suits : Reasons.Max(r => r.Reason.Weight);
}
