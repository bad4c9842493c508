using CareSheets.Species;

namespace CareSheets.Tankmates.Tanks;

/// <summary>What a group has in common of one figure of the water.</summary>
/// <param name="Shared">Nothing where two have nothing in common, or nobody's figure is known.</param>
/// <param name="Unknown">Whose figure is not known; they were left out.</param>
/// <param name="IsWorthTelling">Somebody states it, or readers are told of it in any case.</param>
public sealed record SharedWater(
    CareRangeDeclaration Declaration, Stretch? Shared, IReadOnlyList<Tankmate> Unknown, bool IsWorthTelling)
{
    /// <summary>
    /// Ranges have something in common all together exactly when each two have (Helly 1923, in one
    /// dimension), so pair verdicts already say all that can go wrong.
    /// </summary>
    public static SharedWater Of(CareRangeDeclaration range, IReadOnlyList<Tankmate> mates)
    {
        var keeps = mates.Select(m => m.Need(range)?.Keep).OfType<Stretch>().ToList();
        Stretch? shared = keeps.Count == 0
            ? null
            : keeps.Skip(1).Aggregate((Stretch?)keeps[0], (all, next) => all?.Overlap(next));
        return new SharedWater(
            range, shared, [.. mates.Where(m => m.Need(range)?.Keep is null)],
            range.IsAlwaysShown || mates.Any(m => m.Need(range) is { Keep: not null, IsAssumed: false }));
    }
}
