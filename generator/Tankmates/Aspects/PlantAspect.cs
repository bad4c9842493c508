namespace CareSheets.Tankmates.Aspects;

/// <summary>Whether one eats the plants that the other needs.</summary>
public sealed class PlantAspect : IAspect
{
    private static readonly string[] Plants = ["dense plants", "floating plants"];

    public string Name => "plants";

    public bool IsMutual => false;

    public object Facet(Tankmate mate) => (mate.EatsPlants, Needs(mate));

    public IEnumerable<Detail> Details(Tankmate mate) => [];

    public IEnumerable<Reason> Judge(Tankmate one, Tankmate other) => one.EatsPlants && Needs(other)
        ? [new Reason(ReasonKind.EatsPlantsNeeded, Verdict.WithCare)]
        : [];

    private static bool Needs(Tankmate mate) => mate.Housing.Needs.Any(n => Plants.Contains(n));
}
