using CareSheets.Species;

namespace CareSheets.Tankmates;

/// <summary>
/// A species as a companion: only what decides with whom and in which tank it can live, typed and
/// in canonical units. Nothing stands for unknown and is never taken for harmless.
/// </summary>
public sealed partial record Tankmate
{
    /// <summary>Name of its entry, such as <c>danio-rerio</c>.</summary>
    public required string Name { get; init; }

    public required string Genus { get; init; }

    /// <summary>One for each care range of the schema, in its order.</summary>
    public required IReadOnlyList<WaterNeed> Water { get; init; }

    public required Body Body { get; init; }

    public Flow? Flow { get; init; }

    public Light? Light { get; init; }

    public Oxygen? Oxygen { get; init; }

    public required Temper OwnKind { get; init; }

    public required Temper Others { get; init; }

    public Levels Levels { get; init; }

    /// <summary>Fewest of its own kind that live well together, 1 or more.</summary>
    public required int Group { get; init; }

    /// <summary>Whether more of its kind may live beside it.</summary>
    public GroupKind GroupKind { get; init; }

    public bool NipsFins { get; init; }

    public bool EatsPlants { get; init; }

    /// <summary>Its grown height is stated because it is taller than one expects.</summary>
    public bool IsTall { get; init; }

    public Fins? Fins { get; init; }

    /// <summary>Which other species it bears; where the entry is silent, any.</summary>
    public Neighbours Neighbours { get; init; }

    /// <summary>Taxa that it must not share a tank with, in order of the alphabet.</summary>
    public IReadOnlyList<string> NotWith { get; init; } = [];

    /// <summary>Those of its own taxa that some other species must not share a tank with, in the same order.</summary>
    public IReadOnlyList<string> Avoided { get; init; } = [];

    public required Housing Housing { get; init; }

    public WaterNeed? Need(CareRangeDeclaration range) =>
        Water.FirstOrDefault(w => w.Declaration.Field == range.Field);
}
