using CareSheets.Species;

namespace CareSheets.Tankmates;

/// <summary>What a species needs of one figure of the water, such as its temperature.</summary>
/// <param name="Keep">Long-term range, or nothing where the entry says nothing.</param>
/// <param name="Prefers">Where it does best, or nothing where the entry makes no difference.</param>
/// <param name="IsAssumed">The entry is silent because it goes without saying: fresh water.</param>
public sealed record WaterNeed(
    CareRangeDeclaration Declaration, Stretch? Keep, Stretch? Prefers, bool IsAssumed = false)
{
    /// <summary>Where relatives place what the entry does not say; nothing where they can't tell.</summary>
    public Stretch? Suggested { get; init; }

    /// <summary>
    /// Where it does best. Without a figure of its own that is the whole keep range, so that
    /// widening either range never makes a verdict worse.
    /// </summary>
    public Stretch? Best => Prefers ?? Keep;
}
