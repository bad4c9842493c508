using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>What came of asking relatives about a figure that nobody has stated for a species.</summary>
public enum EstimateVerdict
{
    Estimated,

    /// <summary>The stretch in which they look for the middle is too wide to act on.</summary>
    Disagree,

    /// <summary>Too few species state the figure.</summary>
    TooFew,

    /// <summary>All state the same, so nobody can tell how far another species may stray.</summary>
    AllAlike,
}

/// <summary>An answer of the relatives, with who they are.</summary>
/// <param name="Range">Nothing where too few were asked or all say the same.</param>
public sealed record Estimate(
    ComparedFigure Figure, EstimateVerdict Verdict, EstimatedRange? Range, Relations Relations)
{
    /// <summary>Whether the species' own other figures were weighed too.</summary>
    public bool IsHelped { get; init; }
}

/// <summary>A range as relatives foretell it, in the canonical unit.</summary>
/// <param name="Sure">The stretch that holds the middle in 80 of 100 cases.</param>
/// <param name="Limit">How wide that stretch may be before relatives are said to disagree.</param>
public sealed record EstimatedRange(double Low, double High, double Middle, Interval Sure, double Limit);
