using CareSheets.Diagnostics;

namespace CareSheets.Species;

/// <summary>How a species lives with its own kind and with others.</summary>
/// <param name="Group">Fewest of its own kind that should be kept together, 1 or more.</param>
/// <param name="Eats">What it would eat of its company.</param>
public sealed record Company(
    Sourced<string> Lives,
    Sourced<int> Group,
    Sourced<string> OwnKind,
    Sourced<string> Others,
    IReadOnlyList<Sourced<string>> Levels,
    IReadOnlyList<Sourced<string>> Eats)
{
    public GroupKind GroupKind => Group.Value > 1 ? GroupKind.Several
        : Lives.Value != "alone" ? GroupKind.Free
        : OwnKind.Value == "fierce" ? GroupKind.Only
        : GroupKind.Alone;

    /// <summary>Whether it would eat fish that another species is kept as.</summary>
    public bool EatsFish => Eats.Any(e => e.Value == "small fish");

    /// <summary>Which other species it bears beside it; nothing where the writer has not said.</summary>
    public Sourced<string>? Neighbours { get; init; }

    /// <summary>Taxa of any rank that it must not share a tank with, by scientific name.</summary>
    public IReadOnlyList<Sourced<string>> NotWith { get; init; } = [];

    /// <summary>Evidence of these figures where it is another than the entry's.</summary>
    public Evidence? Evidence { get; init; }
}
