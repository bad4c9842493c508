namespace CareSheets.Names.Matching;

/// <summary>
/// What became of a written name: the species that it was taken for, or why it was not taken, and what
/// else it may be.
/// </summary>
/// <param name="Taken">Exact, former or equivalent name with one target; else nothing.</param>
/// <param name="Others">Runners-up, the likeliest first.</param>
public sealed record NameMatch(MatchCandidate? Taken, Doubt Doubt, IReadOnlyList<MatchCandidate> Others)
{
    /// <summary>Candidates beyond these help nobody.</summary>
    public const int MostOthers = 5;
}
