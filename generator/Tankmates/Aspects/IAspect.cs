namespace CareSheets.Tankmates.Aspects;

/// <summary>
/// One thing that decides whether two species can live together: their temperature, their mouths.
/// An aspect looks at a few fields only, so species that agree in those are judged once for all.
/// </summary>
public interface IAspect
{
    string Name { get; }

    /// <summary>Whether a reason holds both ways and is told once for a pair.</summary>
    bool IsMutual { get; }

    /// <summary>What it looks at, as a value: equal facets get equal reasons and details.</summary>
    object Facet(Tankmate mate);

    /// <summary>What sentences may say of either species.</summary>
    IEnumerable<Detail> Details(Tankmate mate);

    /// <summary>
    /// What speaks against One living with Other, two different species; for an aspect that is not
    /// mutual, only what comes from One.
    /// </summary>
    IEnumerable<Reason> Judge(Tankmate one, Tankmate other);
}
