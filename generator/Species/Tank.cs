using CareSheets.Diagnostics;
using CareSheets.Quantities;

namespace CareSheets.Species;

/// <summary>The smallest tank for the smallest group of grown fish.</summary>
public sealed record Tank(
    Sourced<StatedRange> Length,
    Sourced<StatedRange>? Width,
    Sourced<StatedRange>? Height,
    Sourced<StatedRange> Volume,
    Sourced<string> Substrate,
    Sourced<string> Lid,
    IReadOnlyList<Sourced<string>> Needs)
{
    /// <summary>Evidence of these figures where it is another than the entry's.</summary>
    public Evidence? Evidence { get; init; }
}
