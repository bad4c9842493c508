namespace CareSheets.Housing;

/// <summary>Whether a species can live in a water.</summary>
public enum Suitability
{
    Fits,

    /// <summary>Nothing known speaks against it, but something that counts is not known.</summary>
    FitsAsFarAsKnown,

    FitsNot,
}

/// <summary>A species in one of the shop's waters, figure by figure.</summary>
/// <param name="Oxygen">At the water's own temperature; nothing where that or the need is unknown.</param>
public sealed record SystemFit(
    WaterSource Source, IReadOnlyList<FigureInWater> Figures, OxygenInWater? Oxygen)
{
    public Suitability Suitability =>
        Oxygen is { IsMet: false } || Failing.Any() ? Suitability.FitsNot
        : Unknown.Any() ? Suitability.FitsAsFarAsKnown
        : Suitability.Fits;

    /// <summary>The figures that do not fit, as the entry or else its relatives say.</summary>
    public IEnumerable<FigureInWater> Failing => Figures.Where(f =>
        f.Standing is FigureStanding.TooLow or FigureStanding.TooHigh or FigureStanding.RelativesApart);

    /// <summary>The figures of which the entry or the shop's record says nothing.</summary>
    public IEnumerable<FigureInWater> Unknown =>
        Figures.Where(f => f.Standing is FigureStanding.UnknownOfSpecies or FigureStanding.UnknownOfWater);
}
