using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>How much of a blend is the first of its two waters.</summary>
/// <param name="IsAny">Both waters have the target already: every share does.</param>
public sealed record BlendShare(Share OfFirst, bool IsAny = false)
{
    internal static readonly BlendShare Any = new(Share.FromPercent(100), IsAny: true);
}
