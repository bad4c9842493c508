using CareSheets.Species;

namespace CareSheets.Tankmates.Aspects;

/// <summary>All that is looked at when two species are to share a tank, in the order of telling.</summary>
public static class AspectCatalogue
{
    /// <param name="ranges">The care ranges of the schema: each is an aspect of its own.</param>
    public static IReadOnlyList<IAspect> For(IEnumerable<CareRangeDeclaration> ranges) =>
    [
        new ApartAspect(), new NeighbourAspect(), new SwallowingAspect(), new TemperAspect(),
        .. ranges.Select(r => new WaterAspect(r)),
        new KinAspect(), new FinAspect(), new FlowAspect(), new LightAspect(), new BottomAspect(),
        new PlantAspect(),
    ];
}
