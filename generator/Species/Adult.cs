using CareSheets.Diagnostics;
using CareSheets.Quantities;

namespace CareSheets.Species;

/// <summary>The grown fish. Its length always carries its basis: total, standard or disc width.</summary>
public sealed record Adult(
    Sourced<StatedRange> Length,
    Sourced<StatedRange>? Height,
    Sourced<string> Shape,
    Sourced<string> Mouth,
    Sourced<StatedRange>? LifeSpan,
    Sourced<string>? Sexes)
{
    /// <summary>Whether fins or feelers invite nippers; nothing where nobody knows.</summary>
    public Sourced<string>? Fins { get; init; }

    /// <summary>Evidence of these figures where it is another than the entry's.</summary>
    public Evidence? Evidence { get; init; }
}
