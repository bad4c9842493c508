using CareSheets.Quantities;

namespace CareSheets.Tankmates.Aspects;

/// <summary>
/// What the writer says of neighbours. Figures can't tell that a tiny fish starves or hides beside hasty larger
/// ones, or that one is best kept to its own kind.
/// </summary>
public sealed class NeighbourAspect : IAspect
{
    /// <summary>A neighbour of its size is up to twice as long (common practice, no source).</summary>
    public const double OfItsSize = 2;

    public string Name => "neighbours";

    public bool IsMutual => false;

    public object Facet(Tankmate mate) => (mate.Neighbours, mate.Body.Length, mate.Body.Basis);

    public IEnumerable<Detail> Details(Tankmate mate) =>
        [Detail.Figure("length", DimensionCatalogue.Length, mate.Body.Length, Rounding.Upward)];

    public IEnumerable<Reason> Judge(Tankmate one, Tankmate other) => one.Neighbours switch
    {
        Neighbours.Any => [],
        Neighbours.OfItsSize => IsTooLarge(one.Body, other.Body)
            ? [new Reason(ReasonKind.WantsItsSize, Verdict.WithCare)] : [],
        Neighbours.None => [new Reason(ReasonKind.WantsItsOwnKind, Verdict.KeepApart)],
    };

    private static bool IsTooLarge(Body one, Body other) =>
        Predation.LargestTotal(other) > OfItsSize * Predation.LargestTotal(one);
}
