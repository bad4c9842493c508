namespace CareSheets.Regulations;

/// <summary>All that the shop has written down of law: lists of species, and duties of advice.</summary>
public sealed record LawBook(IReadOnlyList<RegulationList> Lists, IReadOnlyList<AdviceDuty> Duties)
{
    public static readonly LawBook Empty = new([], []);
}
