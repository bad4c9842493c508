using CareSheets.Tankmates.Aspects;

namespace CareSheets.Tankmates.Tanks;

/// <summary>What a tank must offer so that each of a group has what it needs.</summary>
/// <param name="Bottom">Nothing where no bottom serves all.</param>
/// <param name="SlowestFlow">Nothing where nobody's is known.</param>
/// <param name="Oxygen">The highest need that is known.</param>
public sealed record UnitedNeeds(
    Lid Lid, Substrate? Bottom, Flow? SlowestFlow, Flow? FastestFlow, Oxygen? Oxygen, IReadOnlyList<string> Needs)
{
    public static UnitedNeeds Of(IReadOnlyList<Tankmate> mates) => new(
        mates.Max(m => m.Housing.Lid),
        mates.Select(m => (Substrate?)m.Housing.Substrate)
            .Aggregate((one, other) => one is { } a && other is { } b ? BottomAspect.Common(a, b) : null),
        mates.Min(m => m.Flow),
        mates.Max(m => m.Flow),
        mates.Max(m => m.Oxygen),
        [.. mates.SelectMany(m => m.Housing.Needs).Distinct().Order(StringComparer.Ordinal)]);
}
