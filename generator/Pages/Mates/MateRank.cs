using CareSheets.Tankmates;
using CareSheets.Tankmates.Aspects;

namespace CareSheets.Pages.Mates;

/// <summary>
/// How well two species that suit each other go together: first how much room their water leaves,
/// as a multiple of what counts as narrow and up to three of those, then whether they live on
/// levels of their own.
/// </summary>
public sealed class MateRank(Acquaintances mates)
{
    private const double Ample = 3;

    public IReadOnlyList<int> BestFirst(int species, IEnumerable<int> others)
    {
        var one = mates.Mates[species];
        return
        [
            .. others.OrderByDescending(o => Math.Round(Room(one, mates.Mates[o]), 3))
                .ThenBy(o => ShareLevel(one, mates.Mates[o]))
                .ThenBy(o => o),
        ];
    }

    public static bool ShareLevel(Tankmate one, Tankmate other) => (one.Levels & other.Levels) != Levels.None;

    private double Room(Tankmate one, Tankmate other) => mates.Ranges
        .Where(r => WaterAspect.NarrowUpTo(r) > 0)
        .Min(r => (one.Need(r)?.Best, other.Need(r)?.Best) is ({ } here, { } there)
            ? Math.Min(Ample, (here.Overlap(there)?.Width ?? 0) / WaterAspect.NarrowUpTo(r))
            : 0);
}
