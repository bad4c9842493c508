using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Rules;

/// <summary>What may come to harm and by what, the gravest for people first: the order of cautions.</summary>
public enum HazardKind
{
    Shock,
    Sting,
    VenomousSpines,
    PoisonousFlesh,
    Bite,
    LockingSpines,
    Outgrowing,
    Predation,
    Infection,
    Allergy,
    Electricity,
    Release,
    TapWater,
    Medicines,
}

/// <summary>
/// A hazard that an entry inherits, by its taxon or by what it states. One without a condition holds for
/// every aquarium. That no hazard is known of a species never means that there is none.
/// </summary>
/// <param name="Says">The caution in one or two sentences, deferring to doctor, vet or authority.</param>
/// <param name="Brief">The same in a few words, for a small card.</param>
/// <param name="Told">
/// Groups of words: a caution of the entry's own that has a word of each group tells this hazard better,
/// and takes its place. Without groups nothing does.
/// </param>
public sealed record Hazard(
    Sourced<string> Name, HazardKind Kind, string Says, string Brief, Evidence Evidence, AllOf When,
    IReadOnlyList<IReadOnlyList<string>> Told)
{
    /// <summary>Words by which lists of suppliers name such fish.</summary>
    public IReadOnlyList<string> Called { get; init; } = [];

    /// <summary>Whether it hurts who handles the fish, or its water.</summary>
    public bool IsForHands => Kind <= HazardKind.LockingSpines;

    public bool IsGeneral => When.Parts.Count == 0;
}
