namespace CareSheets.Relatives;

/// <summary>What was kept from the engine before it was asked.</summary>
public enum LeftOut
{
    /// <summary>The species' own value of the figure.</summary>
    Species,

    /// <summary>All that its entry says: only its name is known, as for a draft.</summary>
    Entry,

    /// <summary>The values of its whole genus.</summary>
    Genus,
}

/// <summary>
/// How well one figure was foretold for the species that state it. Errors are distances between the
/// foretold and the stated middle, in the figure's canonical unit.
/// </summary>
/// <param name="NearestError">Error of the mean of the nearest relatives, for comparison.</param>
/// <param name="OverallError">Error of the mean of all other species.</param>
/// <param name="Crps">Mean continuous ranked probability score; small is good.</param>
public sealed record RecordLine(
    ComparedFigure Figure, LeftOut LeftOut, int Count, IReadOnlyList<CoverageCount> Coverage,
    double Error, double NearestError, double OverallError, double Crps);

/// <summary>How often an interval held the stated middle.</summary>
/// <param name="Claimed">The share that it claims to hold, such as 0.8.</param>
/// <param name="Low">Fewest cases that agree with the claim, by the binomial distribution.</param>
public sealed record CoverageCount(double Claimed, int Covered, int Low, int High)
{
    public bool Agrees => Covered >= Low && Covered <= High;
}
